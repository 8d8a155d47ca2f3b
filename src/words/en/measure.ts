/** What the measurements say: traps, their filters and refusals, aims, the press sheet, the fit, formula practice. */
export const measure = {
  'trap.notANumber': 'No trap can be computed: {symbol} is not a number. Read that patch again.',
  'trap.negative':
    'No trap can be computed: {symbol} is {value, number, ::.00}. A [[density|density]] above the paper’s cannot be below 0; set the densitometer to 0 on the bare paper.',
  'trap.tooHigh':
    'No trap can be computed: {symbol} is {value, number, ::.00}, and no print reads above {most, number}. Is a decimal point missing?',
  'trap.secondReadsNothing':
    'No trap can be computed: D2, the second ink alone, reads 0, and trap is reckoned against it. Read the solid of the second ink.',
  'trap.readsNextToNothing':
    'Densities tell no trap here: {ink} alone reads only {D2, number, ::.00} through the {filter} filter, so the last digit of a reading would decide the answer.',
  'trap.noLightLeft':
    'Densities tell no trap here: what lies below reads {D1, number, ::.00} through the {filter} filter, {ink} alone {D2, number, ::.00}. The ink below has already taken that light and leaves hardly any for {ink} to take.',
  'trap.dryBefore': 'There is no trap wet on wet here: the sheet is dry when it reaches {ink}.',
  'trap.filmNotANumber': 'No mass trap can be computed: a film is not a number.',
  'trap.filmNegative': 'No mass trap can be computed: a film cannot be below 0.',
  'trap.nothingOnBare': 'No mass trap can be computed: there is no ink on bare paper to measure it against.',

  'filter.complementary': 'The {filter} filter is the right one for {ink}: it lets through the light that {ink} takes.',
  'filter.strongest':
    'The {filter} filter is used because the solid of {ink} reads highest through it. Only cyan, magenta and yellow have a filter fixed by rule.',
  'filter.wrong':
    'This is the wrong filter: through {filter}, {ink} darkens less than through {right}, so the number says more about the ink below. Trap onto any ink is read through the filter of the second ink.',

  'why.alike':
    'Here both happen to agree within 2 points, though they measure different things: {massTrap, number, ::.0} % of the ink’s film transferred, {apparent, number, ::.0} % of its density was added.',
  'why.densitiesDoNotAddUp':
    '{massTrap, number, ::.0} % of the film transferred, yet the densitometer says {apparent, number, ::.0} %. Densities of inks on top of each other do not add up: light that the lower ink and the surface have taken cannot be taken again. Even a full transfer would read only {full, number, ::.0} % here.',
  'why.lifted':
    '{massTrap, number, ::.0} % of the film transferred, yet the densitometer says {apparent, number, ::.0} %. The second unit also lifted {lost, number, ::.0} % of the ink below, and the densitometer counts that against the second ink; a full transfer would read {full, number, ::.0} %.',
  'why.thinFilmsReadDark':
    'Only {massTrap, number, ::.0} % of the film transferred, yet the densitometer says {apparent, number, ::.0} %. A thin film darkens more for its thickness than a full one, so a poor transfer reads better than it is.',

  'strip.inkWithoutColour':
    'No colour can be shown or read where {ink} prints: it has none. Give it a colour on the bench, in its line below the stair.',

  'aim.unknown': '“{set}” is no published set. Known are {known}.',
  'aim.spotInk':
    'Published sets hold only cyan, magenta, yellow and black; {ink} is none of them, so there is no aim here.',

  'sheet.empty': 'The file is empty. It needs a line of headings and a line for each patch; a template can be saved.',
  'sheet.otherKind':
    'This is a {kind} file, not a table of readings. In a spreadsheet, save the table as CSV; a template can be saved here.',
  'sheet.noText': 'This file is no text, so it cannot be a table of readings. In a spreadsheet, save the table as CSV.',
  'sheet.tooLarge': 'This file is longer than {most, number} characters; a press sheet’s readings are far fewer.',
  'sheet.tooManyRows': 'This table has more than {most, number} rows; a press sheet’s readings are far fewer.',
  'sheet.missingColumns':
    'This table lacks the columns {missing}; its headings are {found}. Needed are patch, red, green and blue; a template can be saved.',
  'sheet.columnTwice': 'Two columns are headed {column}; each heading may stand once.',
  'sheet.nothingToUse': 'No row of this table could be used.',
  'sheet.openQuote': 'a quotation mark is not closed properly',
  'sheet.tooManyCells':
    'has {count, number} cells where the headings name {allowed, number}; a decimal comma in a table separated by commas needs quotation marks',
  'sheet.noPatch': 'says no patch; name its inks joined by +, or paper',
  'sheet.unknownInk':
    '“{ink}” is no loaded ink; did you mean {near}? Loaded are {known}, and the bare paper is called paper',
  'sheet.inkTwice': '“{patch}” names an ink twice',
  'sheet.missingCell': 'the density through the {filter} filter is missing',
  'sheet.notANumber': '“{text}” in the column {filter} is no number',
  'sheet.negative':
    '{value, number, ::.00} in the column {filter} is below 0; set the densitometer to 0 on the bare paper, or read the paper too',
  'sheet.tooHigh':
    '{value, number} in the column {filter} is above {most, number}, and no print reads that high; is a decimal point missing?',
  'sheet.belowPaper': 'reads below the paper of the same sheet; one of the two was misread',
  'sheet.patchMissing': 'No trap can be computed: the patch {patch} was not read.',

  'fit.nothingToFit': 'Choose at least one value to fit.',
  'fit.otherInks':
    'The readings are of other inks ({sheet}) than those loaded now. Load those inks in that order, or read the sheet again.',
  'fit.tooFewReadings':
    '{readings, number} densities cannot decide {parameters, plural, one {# value} other {# values}}. Read more patches, or fit fewer values.',
  'fit.needsOverprints':
    'No overprint was read, and only overprints show what acts on [[trapping|trap]]. Read patches of two inks or more, or fit only the films.',
  'fit.leftOpen':
    'These readings leave open: {parameters}. They would be met almost as well by any other value, so none is given. Fit fewer values at once, or read patches that tell them apart.',
  'fit.poor':
    'The model meets these readings only to ±{deviation, number, ::.00} density, several times what a densitometer’s last digit explains. Its inks or its paper are not quite those of this press.',
  'fit.atBound': 'The legal range stopped: {parameters}. The press may lie outside what the model can be.',
  'fit.parameter.film': 'film of {ink} on the form roller',
  'fit.parameter.tack': 'tack of {ink}',
  'fit.parameter.dampening': 'dampening',
  'fit.parameter.settingGain': 'setting gain of the paper',
  'fit.parameter.evenness': 'evenness of the paper',

  'formula.empty': 'Type an equation with D1, D2 and D3.',
  'formula.tooLong': 'This is longer than {most, number} characters; the equations asked for are shorter.',
  'formula.tooDeep': 'This has too many brackets inside brackets.',
  'formula.unreadable': 'This cannot be read as an equation. Are all brackets closed?',
  'formula.unreadableAt':
    'This cannot be read from sign {place, number} on. Is a bracket or an operator missing there?',
  'formula.onlyArithmetic': 'Only numbers, D1, D2, D3, + − × / ^, brackets and log10, ln, exp, sqrt can be used here.',
  'formula.unknownSymbol': '“{name}” is not known here; the densities are called D1, D2 and D3.',
  'formula.unknownOperator': 'The operator “{name}” is not used here; allowed are + − × / ^.',
  'formula.unknownFunction': '“{name}” is not used here; allowed are log10, ln, exp and sqrt.',
  'formula.missingTimes': '{name} stands right before a bracket; write × between them if they are multiplied.',
  'formula.whichLog': 'log can mean two things: write log10 for the one densities are made with, or ln.',
  'formula.oneValue': '{name} takes one value.',
  'formula.slip.share': 'This gives trap as a share of 1; the equation asked for gives percent.',
  'formula.slip.exchanged': 'D1 and D2 have changed places: D1 is the first ink alone, D2 the second.',
  'formula.slip.firstKept':
    'This divides the whole overprint by the second ink; the density of the first ink has to be taken off first.',
  'formula.slip.overFirst':
    'This measures the added density against the first ink; trap is reckoned against the second ink alone.',
  'formula.slip.overBoth':
    'This compares densities with their sum; the density that was added has to be compared with that of the second ink.',
  'formula.slip.preucil': 'This is Preucil’s equation; another was asked for.',
  'formula.slip.ritz': 'This is Ritz’s equation; another was asked for.',
  'formula.slip.brunner': 'This is Brunner’s equation; another was asked for.',
} as const

export type MeasureKey = keyof typeof measure
