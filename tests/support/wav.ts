/** 16-bit WAV of one channel, written here so that the reading is held to more than its own writer. */
export function wavOf(sound: Float32Array, rateHz: number): Buffer {
  const bytes = Buffer.alloc(44 + 2 * sound.length);
  bytes.write('RIFF');
  bytes.writeUInt32LE(bytes.length - 8, 4);
  bytes.write('WAVEfmt ', 8);
  bytes.writeUInt32LE(16, 16);
  bytes.writeUInt16LE(1, 20);
  bytes.writeUInt16LE(1, 22);
  bytes.writeUInt32LE(rateHz, 24);
  bytes.writeUInt32LE(2 * rateHz, 28);
  bytes.writeUInt16LE(2, 32);
  bytes.writeUInt16LE(16, 34);
  bytes.write('data', 36);
  bytes.writeUInt32LE(2 * sound.length, 40);
  for (const [i, value] of sound.entries())
    bytes.writeInt16LE(Math.round(32_767 * Math.max(-1, Math.min(1, value))), 44 + 2 * i);
  return bytes;
}
