/** The microphone of this device, as honest as the browser lets it be, and files that phones record. */
import { loudest, type Sound } from '../../recording/audio.js';
import { PLAY_RATE_HZ, playedChannels } from '../../recording/play-file.js';

/** Everything that a telephone call needs and a measurement must not have is switched off. */
const HONEST = { echoCancellation: false, noiseSuppression: false, autoGainControl: false } as const;

interface Recorder {
  /** Asks for the microphone. Throws where it is refused. */
  readonly start: () => Promise<void>;
  readonly stop: () => Promise<Blob>;
}

export function createRecorder(): Recorder {
  let running: { readonly recorder: MediaRecorder; readonly whole: Promise<Blob> } | undefined;
  return {
    start: async () => {
      const stream = await navigator.mediaDevices.getUserMedia({ audio: HONEST });
      const recorder = new MediaRecorder(stream);
      const parts: Blob[] = [];
      recorder.ondataavailable = ({ data }) => parts.push(data);
      const whole = new Promise<Blob>((done) => {
        recorder.onstop = () => {
          for (const track of stream.getTracks()) track.stop();
          done(new Blob(parts, { type: recorder.mimeType }));
        };
      });
      recorder.start();
      running = { recorder, whole };
    },
    stop: async () => {
      const { recorder, whole } = running ?? {};
      running = undefined;
      recorder?.stop();
      return (await whole) ?? new Blob();
    },
  };
}

/** Any sound that the browser can read, at the rate of the test. */
export async function decoded(sound: Blob): Promise<Sound> {
  const context = new OfflineAudioContext(1, 1, PLAY_RATE_HZ);
  const buffer = await context.decodeAudioData(await sound.arrayBuffer()).catch(() => {
    throw new Error('The browser cannot read this file as sound: bring a WAV, or what the phone recorded.');
  });
  const channels = Array.from({ length: buffer.numberOfChannels }, (_, i) => buffer.getChannelData(i));
  return loudest(channels, PLAY_RATE_HZ);
}

/** Plays the stereo test once, as loud as it is in the file. */
export async function playTest(): Promise<void> {
  const context = new AudioContext({ sampleRate: PLAY_RATE_HZ });
  await context.resume();
  const channels = playedChannels('stereo');
  const buffer = new AudioBuffer({
    numberOfChannels: channels.length,
    length: channels[0]?.length ?? 0,
    sampleRate: PLAY_RATE_HZ,
  });
  channels.forEach((samples, i) => {
    buffer.copyToChannel(Float32Array.from(samples), i);
  });
  const source = new AudioBufferSourceNode(context, { buffer });
  source.connect(context.destination);
  source.onended = () => context.close();
  source.start();
}
