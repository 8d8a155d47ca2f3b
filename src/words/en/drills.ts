/** Fault drills, remedies and what they change, in plain English. */
export const drills = {
  'drill.intro':
    'Something is wrong with this job. Look at what came off the press, measure what you need, name the cause and what proves it, then put it right.',
  'drill.misleading':
    'One measurement misleads: its sample stood open, or its gauge was not wiped. The sheet itself never does. So never believe a cause on one measurement alone: the sheet or a second kind of evidence has to agree.',
  'drill.twoFaults': 'Two faults act at once here.',
  'drill.level.easy': 'Easy: one large fault',
  'drill.level.medium': 'Medium: one fault, more rivals',
  'drill.level.hard': 'Hard: two faults at once',

  'drill.job.harvest poster': 'Harvest market poster: four inks on coated paper, sheet-fed',
  'drill.job.seed leaflet': 'Seed leaflet: four inks of equal tack on light-weight coated paper, web',
  'drill.job.delivery note': 'Delivery note: four soft inks on weak uncoated paper, sheet-fed',
  'drill.job.market news': 'Market news: four inks on newsprint, web, black last',
  'drill.job.recipe cards': 'Recipe cards: four inks on coated paper, sheet-fed, black last',
  'drill.job.jam label': 'Jam label: three inks on coated paper, sheet-fed, waterless',

  'drill.cause.order swapped': '{ink} and {next} sit in each other’s unit',
  'drill.cause.tack too high': '{ink} is too tacky',
  'drill.cause.tack too low': '{ink} is not tacky enough',
  'drill.cause.film too heavy': 'Too much {ink} is let in',
  'drill.cause.film too thin': 'Too little {ink} is let in',
  'drill.cause.water too high': 'Too much water on the press',
  'drill.cause.unit too warm': 'The unit of {ink} runs too warm',
  'drill.cause.paper weak': 'The paper’s surface is too weak',
  'drill.cause.paper too closed': 'The paper is too closed: it draws in too little ink',
  'drill.cause.speed too high': 'The press runs too fast',
  'drill.cause.interval too short': 'The units stand too close: too little time between two inks',
  'drill.cause.soiled unit': 'The unit of {ink} is soiled with another ink',

  'drill.why.order swapped':
    'Each ink was graded for its own unit. In the wrong one it meets inks that are stickier, or softer, than it can stand.',
  'drill.why.tack too high':
    'A film that is too sticky splits too late: softer films below it give way first and are lifted off.',
  'drill.why.tack too low':
    'A film that is too soft splits too early once it lies on the sheet: the next blanket lifts part of it.',
  'drill.why.film too heavy': 'More ink prints a darker solid, and a thicker film splits more easily.',
  'drill.why.film too thin': 'Less ink prints a lighter solid, and a thinner film pulls harder.',
  'drill.why.water too high':
    'Water in the ink makes every fresh film softer, so overprints change; and it weakens the paper’s surface.',
  'drill.why.unit too warm':
    'Warm ink is soft ink: tack falls by about 2 to 3 % a degree (number from memory). On the sheet it looks just like an ink of too low tack.',
  'drill.why.paper weak': 'The pull of the inks is as ever, but the surface gives way to it.',
  'drill.why.paper too closed':
    'Solids get lighter, since the paper holds less ink at once; and films set too slowly, so they stay soft for the next blanket.',
  'drill.why.speed too high': 'Speed raises the pull of every ink alike, but not the strength of the paper.',
  'drill.why.interval too short':
    'A film needs time on the paper to set. Without it the next blanket meets a softer film.',
  'drill.why.soiled unit':
    'Foreign ink in the unit dirties its colour from the first sheet, and slowly leaves with the printed sheets.',

  'drill.putRight.order swapped': 'Put the inks back into the units of the ticket',
  'drill.putRight.tack too high': 'Bring {ink} down to the tack of the ticket',
  'drill.putRight.tack too low': 'Bring {ink} up to the tack of the ticket',
  'drill.putRight.film too heavy': 'Let in less {ink}, down to the ticket',
  'drill.putRight.film too thin': 'Let in more {ink}, up to the ticket',
  'drill.putRight.water too high': 'Take the water back to the ticket',
  'drill.putRight.unit too warm': 'Cool the unit of {ink} to the ticket',
  'drill.putRight.paper weak': 'Change to paper of the strength on the ticket',
  'drill.putRight.paper too closed': 'Change to paper as open as on the ticket',
  'drill.putRight.speed too high': 'Slow the press to the speed of the ticket',
  'drill.putRight.interval too short': 'Use units as far apart as on the ticket',
  'drill.putRight.soiled unit': 'Wash up the unit of {ink} and fill it with fresh ink',

  'drill.evidence.eye': 'Sheet, by eye',
  'drill.evidence.loupe': 'Loupe',
  'drill.evidence.strip': 'Densitometer on the strip',
  'drill.evidence.run chart': 'Run chart',
  'drill.evidence.tackmeter': 'Tackmeter: {ink}',
  'drill.evidence.thermometer': 'Thermometer: unit of {ink}',
  'drill.evidence.film gauge': 'Film gauge: {ink}',
  'drill.evidence.units': 'Which ink sits where',
  'drill.evidence.water gauge': 'Water gauge',
  'drill.evidence.speed counter': 'Speed counter',
  'drill.evidence.unit timing': 'Time between two units',
  'drill.evidence.pick test': 'Pick test of the paper',
  'drill.evidence.absorption test': 'Absorption test of the paper',

  'drill.evidenceHow.eye': 'Lay the first sheet beside the good one and compare the patches.',
  'drill.evidenceHow.loupe':
    'Count, among {spots} spots of a patch, those where the last ink is missing and those where the paper is torn.',
  'drill.evidenceHow.strip': 'Read solids and overprints, status T, minus paper.',
  'drill.evidenceHow.run chart': 'Compare the solids of the first sheet with those after the run has settled.',
  'drill.evidenceHow.tackmeter': 'Take a sample from the can and read it at the standard condition.',
  'drill.evidenceHow.thermometer': 'Aim the thermometer at the rollers through the guard’s window.',
  'drill.evidenceHow.film gauge': 'Read the ink film on the form roller, press stopped and locked out.',
  'drill.evidenceHow.units': 'Read the labels on the units and look at the ink in them.',
  'drill.evidenceHow.water gauge': 'Read the water film against normal, through the guard’s window.',
  'drill.evidenceHow.speed counter': 'Read the counter on the desk.',
  'drill.evidenceHow.unit timing': 'Time a sheet from one unit to the next with a flash.',
  'drill.evidenceHow.pick test': 'Print a strip at rising speed with the medium oil.',
  'drill.evidenceHow.absorption test':
    'Spread a test ink, wipe it off after two minutes and read how dark a stain stays (common practice).',

  'drill.misled.tackmeter':
    'The sample of {ink} stood open and had changed: the ink in the unit is as the ticket has it.',
  'drill.misled.thermometer':
    'The thermometer at {ink} was aimed at bright steel: the ink’s own temperature is as the ticket has it.',
  'drill.misled.film gauge': 'The film gauge had not been wiped: the film of {ink} is as the ticket has it.',
  'drill.misled.water gauge':
    'The water gauge was read while a plate was being damped anew: the water is as the ticket has it.',
  'drill.misled.speed counter': 'The speed counter was set for another gear: the speed is as the ticket has it.',
  'drill.misled.unit timing': 'The wrong pair of units was timed: the units stand as the ticket has them.',
  'drill.misled.pick test': 'The test oil was not at 23 °C: the paper is as strong as the ticket has it.',
  'drill.misled.absorption test': 'The test sheet was damp: the paper is as open as the ticket has it.',

  'drill.quantity.lightness': 'L*, lightness (0 black, 100 white; no unit)',
  'drill.quantity.red-green': 'a* (− green, + red; no unit)',
  'drill.quantity.yellow-blue': 'b* (− blue, + yellow; no unit)',
  'drill.quantity.missing': 'Spots without the last ink, of all spots',
  'drill.quantity.torn': 'Torn spots, of all spots',
  'drill.quantity.density': 'Density, {filter} filter (no unit)',
  'drill.quantity.drift': 'Density gained over the run, {filter} filter (no unit)',
  'drill.quantity.tack': 'Tack, tack units',
  'drill.quantity.temperature': 'Temperature, °C',
  'drill.quantity.film': 'Film on the form roller, µm',
  'drill.quantity.water': 'Water, times normal',
  'drill.quantity.place': 'Unit in which it sits, counted from 1',
  'drill.quantity.speed': 'Speed, m/s',
  'drill.quantity.interval': 'Time between two units, s',
  'drill.quantity.pick velocity': 'Pick velocity, m/s (not a press speed)',
  'drill.quantity.absorbency': 'Absorbency, times the ticket’s',

  'drill.spoken.lightness': 'the lightness (L*)',
  'drill.spoken.red-green': 'the reading from green to red (a*)',
  'drill.spoken.yellow-blue': 'the reading from blue to yellow (b*)',
  'drill.spoken.missing': 'the share of spots without the last ink',
  'drill.spoken.torn': 'the share of torn spots',
  'drill.spoken.density': 'the density through the {filter} filter',
  'drill.spoken.drift': 'the density gained over the run through the {filter} filter',
  'drill.spoken.tack': 'the tack',
  'drill.spoken.temperature': 'the temperature',
  'drill.spoken.film': 'the thickness of the film on the form roller',
  'drill.spoken.water': 'the amount of water',
  'drill.spoken.place': 'the number of the unit in which it sits',
  'drill.spoken.speed': 'the speed of the press',
  'drill.spoken.interval': 'the time between two units',
  'drill.spoken.pick velocity': 'the pick velocity',
  'drill.spoken.absorbency': 'the absorbency',

  'drill.verdict.right': 'Right: {cause}.',
  'drill.verdict.wrong': 'Not so: {cause}.',
  'drill.verdict.missed': 'Missed: {cause}.',
  'drill.verdict.proven': 'What you named rules out every other cause offered.',
  'drill.verdict.leftOpen':
    '{count, plural, one {What you named does not yet rule out one other explanation: {cause}.} other {What you named does not yet rule out # other explanations, such as: {cause}.}}',
  'drill.verdict.against':
    'Against it speaks “{evidence}”{where, select, job {} other {, most of all at {place}}}. Were it so, {quantity} would be {would, select, higher {higher} other {lower}}{where, select, job {} other { there}}.',
  'drill.verdict.next':
    '{open, select, wrong {Nothing that you took speaks against it yet. Have a look at “{evidence}” as well.} other {To rule that out, “{evidence}” helps: take it, and tick it too.}}',
  'drill.verdict.measure':
    'Nothing that you took speaks against it yet. But each cause has a measurement at the press that shows it: take that of each of the other causes as well.',
  'drill.verdict.needless': 'You could have done without: {evidence}.',
  'drill.verdict.enough': 'This would have been enough: {evidence}.',

  'drill.cure.back': 'The sheet is good again: {colour, number, ::.0} dE00 from the good one at most.',
  'drill.cure.notBack': 'The sheet is not good yet: still {colour, number, ::.0} dE00 from the good one.',
  'drill.cure.worse':
    'That made it worse: {before, number, ::.0} dE00 from the good sheet before, {after, number, ::.0} after.',
  'drill.cure.idle': 'That changed nothing: there was nothing to put right.',
  'drill.cure.workAround': 'This works around the cause. The cause is still there.',
  'drill.cure.atTheRoot': 'This puts right the cause itself.',

  'remedy.re-grade': 'Grade the tacks anew, 2 points apart',
  'remedy.reduce tack': 'Lower the tack of a later ink with a reducer, by 2 points',
  'remedy.stiffen first': 'Raise the tack of the first ink by 2 points',
  'remedy.cool first': 'Cool the first unit by 5 °C',
  'remedy.slow down': 'Slow the press by a quarter',
  'remedy.more film': 'Let in 15 % more of a later ink',
  'remedy.less film first': 'Let in 15 % less of the first ink',
  'remedy.light first': 'Print the ink of lightest coverage first',
  'remedy.less water': 'Take off a quarter of the water',
  'remedy.stronger paper': 'Take paper with a quarter more surface strength',
  'remedy.dry between': 'Let the sheet dry before a later ink',

  'remedy.re-grade.cost': 'A last ink that is too soft prints unsharp edges.',
  'remedy.reduce tack.cost': 'Reduced ink has less colour, spreads the dots and sets more slowly.',
  'remedy.stiffen first.cost': 'A stickier first ink pulls harder at the paper: it may pick.',
  'remedy.cool first.cost': 'A colder, stickier first ink pulls harder at the paper: it may pick.',
  'remedy.slow down.cost': 'Fewer sheets an hour.',
  'remedy.more film.cost': 'More ink sets off onto the next sheet and dries more slowly.',
  'remedy.less film first.cost': 'A thinner first film pulls harder at the paper and covers less.',
  'remedy.light first.cost': 'It breaks the standard order that proofs and colour profiles are made for.',
  'remedy.less water.cost': 'Too little water, and the plate takes ink where it should stay clean: scumming.',
  'remedy.stronger paper.cost': 'Stronger paper costs more.',
  'remedy.dry between.cost': 'Another pass through the press; and ink that has dried too well can repel the next.',

  'effect.least trap': 'Poorest mass trap',
  'effect.most lifted': 'Most of an earlier ink lifted at one unit',
  'effect.most torn': 'Paper torn',
  'effect.contamination': 'Worst foreign ink in a unit, settled (computed index, the model’s own)',
  'effect.thinnest solid': 'Thinnest solid',
  'effect.ink laid': 'Ink laid where all print',
  'effect.speed': 'Speed',
} as const

export type DrillKey = keyof typeof drills
