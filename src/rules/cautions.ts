/** The usual cautions, printed beside the step they belong to. They defer to local codes and licensed practice. */
export const CAUTIONS = {
  'photograph-menu': 'Photograph every menu page and the wiring before you change anything.',
  'volume-down': 'Turn the volume down before an ear goes near a driver and before test noise starts.',
  'power-off-wires':
    'Switch the power off before you touch loudspeaker wires; never let bare ends touch and never join two amplifier outputs.',
  'powered-box': 'Never open a powered loudspeaker or an amplifier; leave that to a qualified technician.',
  domes: 'Keep fingers and cloth off the domes; they dent at a touch.',
  'thin-display':
    'Stand nothing on top of a thin display; secure any wedged or raised box so that it cannot slide or tip.',
  heat: 'Keep boxes and soft material away from fireplaces, heaters and vents.',
  fiber: 'With mineral fiber wear gloves and a mask, and keep it away from ports and vents.',
  lifting:
    'Lift heavy boxes with two people. Wall and ceiling mounts, and anchors of furniture and displays, follow the maker and local codes.',
  'test-noise': 'Test noise is louder than it seems: keep it short and at the level of speech.',
  laser: 'A laser ruler is a class 2 beam: never point it at eyes or mirrors.',
  'amplifier-load':
    'Two loudspeakers on one output halve the load: check the lowest impedance the amplifier allows.',
  'tweeter-power':
    'Raised treble costs tweeter power: 3 dB is twice, 6 dB four times the power. Stay within 6 dB.',
  ventilation:
    'Filling must not block the ventilation of electronics; use flame-retardant material and follow local fire rules.',
  'licensed-trade': 'Anything inside walls or on mains wiring is for a licensed trade.',
  hearing: 'Get loud, long listening back to a level at which you can talk with ease.',
} as const;
export type CautionId = keyof typeof CAUTIONS;
