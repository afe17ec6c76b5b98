/** Choices that a denial turns into another one: "not muted" is playing. Others a denial only rules out. */
import type { Choice, ChoiceFactId } from '../catalog.js';

type Opposites = {
  readonly [Id in ChoiceFactId]?: { readonly [Value in Choice<Id>]?: Choice<Id> };
};

export const OPPOSITES: Opposites = {
  upmixUse: { on: 'off' },
  upmixCenterControl: { present: 'none' },
  centerSpread: { on: 'off', off: 'on' },
  upmixAmbience: { yes: 'no' },
  displaySpeakers: { playing: 'muted' },
  voiceBoost: { on: 'off' },
  dynamicCompression: { on: 'off' },
  subwoofer: { one: 'none', several: 'none' },
  centerEnclosure: { vented: 'sealed' },
  centerPowered: { yes: 'no' },
  equalization: { automatic: 'none' },
  bayStuffing: { filled: 'open' },
  jumpers: { tight: 'loose', loose: 'tight' },
  lipSync: { 'voice-late': 'in-step', 'voice-early': 'in-step' },
  troubleWhenLoud: { yes: 'no' },
};
