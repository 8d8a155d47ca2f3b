/** The tackmeter, the pick test, the wet-on-wet proof and the noise of readings, in plain English. */
export const instruments = {
  'tackmeter.what':
    'A tackmeter spreads ink over three turning rollers and reads the force that splitting it takes. That reading is the ink’s tack.',
  'tackmeter.scale':
    'The scale is the instrument’s own. Two instruments give two numbers for one ink, and there is no rule to turn one into the other.',
  'tackmeter.instrument.laboratory': 'Laboratory tackmeter: the one behind the tack numbers of the press',
  'tackmeter.instrument.workshop': 'Workshop tackmeter: other rollers, other scale',
  'tackmeter.standard':
    'Standard condition: {volume, number, ::.00} ml of ink, {temperature, number, ::.0} °C, {speed, number} rpm, read after {seconds, number} s.',
  'tackmeter.volume': 'Ink metered on, ml',
  'tackmeter.temperature': 'Rollers, °C',
  'tackmeter.speed': 'Main roller, rpm',
  'tackmeter.surface': 'Surface speed {speed, number, ::.00} m/s',
  'tackmeter.film': 'Film on the rollers {film, number, ::.0} µm',
  'tackmeter.evaporated': '{share, number, ::percent} of the solvent has evaporated',
  'tackmeter.reading': 'Reading {reading, number, ::.0} tack units of this instrument',
  'tackmeter.repeats':
    'Readings repeat within {deviation, number, ::.0} tack units of this instrument (standard deviation, chosen).',
  'tackmeter.average':
    'Mean of {count, plural, one {# reading} other {# readings}}: {mean, number, ::.00} tack units, standard error {error, number, ::.00} tack units.',
  'tackmeter.conversion':
    'An ink of tack 1 pulls {factor, number, ::.000} tack units under these conditions; at the press’s reference, 2 m/s, 2 µm and 25 °C, it pulls 1 tack unit.',
  'tackmeter.drying': 'Left running, ink dries on the rollers and reads higher and higher: read at one minute.',
  'tackmeter.exercise.read': 'Read this ink at the standard condition and write down its tack.',
  'tackmeter.exercise.grade': 'Read these inks and put them in the order in which they should print.',
  'tackmeter.exercise.web': 'What does this ink pull at {speed, number} m/s? Run it at that speed and read.',

  'pickTest.what':
    'A strip of paper is printed with a sticky oil, faster and faster. Where its surface begins to tear, the pull has grown as strong as the paper.',
  'pickTest.notPressSpeed':
    'A pick velocity is not a press speed. Oil, film and nip are other than a press’s: paper that picks at 2 m/s here may run well at 10 m/s there.',
  'pickTest.oil.low': 'Low-viscosity oil, {viscosity, number, ::.0} Pa s',
  'pickTest.oil.medium': 'Medium oil, {viscosity, number, ::.0} Pa s',
  'pickTest.oil.high': 'High-viscosity oil, {viscosity, number, ::.0} Pa s',
  'pickTest.endVelocity': 'Speed at the end of the strip, m/s',
  'pickTest.wet': 'Wet the strip first',
  'pickTest.mark': 'Mark where picking begins: from where about one spot in twenty is torn.',
  'pickTest.resistance':
    'Pick resistance = {velocity, number, ::.00} m/s × {viscosity, number, ::.0} Pa s = {resistance, number, ::.0} N/m',
  'pickTest.strength': 'In the press model this paper has a surface strength of {strength, number, ::.0} tack units.',
  'pickTest.verdict.right': 'Right: here picking begins.',
  'pickTest.verdict.too early': 'Too early: single spots tear by chance before picking begins.',
  'pickTest.verdict.too late': 'Too late: picking has begun before this place.',
  'pickTest.verdict.nothing picks': 'Picking does not begin on this strip. Take a stickier oil or a higher speed.',
  'pickTest.verdict.rightly none':
    'Right: picking does not begin on this strip. Take a stickier oil or a higher speed.',

  'proof.what':
    'Two inks are printed on one strip, the second while the first is wet. Weighing strip and formes tells how much of the second ink stayed.',
  'proof.ratio':
    'Mass trap ratio = weight gained on wet ink / weight gained on dry paper = {wet, number, ::.0} mg / {dry, number, ::.0} mg = {ratio, number, ::percent}',
  'proof.limit':
    'A balance cannot tell whose ink it weighs. If the second forme lifts some of the first ink, the strip gains less, and the ratio reads lower than the second ink’s own trap.',
  'proof.swap': 'Print them the other way round',
} as const
