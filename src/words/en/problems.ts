/**
 * What can be wrong with a set-up, a shelf, a list of events or a file, and what is allowed. {given} is what stands there;
 * words that a file uses ({allowed}, {near}) are in no language. The commands print these sentences in English.
 */
const given =
  '{given, select, nothing {nothing} null {null} list {a list} object {an object} symbol {a symbol} other {{given}}}'
const whole = '{what, select, ink {an ink} paper {a paper} press {a press} reading {a reading} other {a set-up}}'
const range =
  '{whole, select, yes {whole numbers} other {numbers}} from {least} to {most}{unit, select, none {} other { {unit}}}'
const part =
  '{what, select, view {a view} scene {a scene} second {a second set-up} row {a row of readings} trial {a trial} readings {a file of readings} settings {the settings} other {a file}}'
const items = '{what, select, scenes {scenes} trials {trials} rows {rows} lessons {lessons} other {things}}'
const nearest = '{near, select, none {} other {; did you mean {near}?}}'

export const problems = {
  'problem.kept': 'The lesson keeps this as it is; allowed are the controls that are not greyed out.',
  'problem.number': `${given} is not allowed; allowed are ${range}`,
  'problem.flag': `${given} is not allowed; allowed are true and false`,
  'problem.choice': `${given} is no {what, select, paper {paper} other {kind of press}}; allowed are {allowed}${nearest}`,
  'problem.name': `${given} is no name; allowed is a text of 1 to {most} characters on one line, without the word "on" standing alone`,
  'problem.colour': `${given} is no colour; allowed are "#rrggbb" and [L, a, b] with L from 0 to 100, a and b from -150 to 150`,
  'problem.object': `${given} is not allowed; ${whole} is an object with {allowed}`,
  'problem.missing': `is missing; ${whole} needs it`,
  'problem.unknown': `not known here{near, select, none {} other { (did you mean {near}?)}}; allowed are {allowed}`,
  'problem.reading': `${given} is no reading; allowed are "first", "settled" and '{'"sheet": N'}', N ${range}`,
  'problem.inks': `${given} is not allowed; allowed is a list of inks in unit order`,
  'problem.inkCount':
    '{count, plural, one {1 ink is} other {{count} inks are}} not allowed; allowed are {least} to {most}',
  'problem.noUnit': 'unit {given} does not exist; allowed are whole numbers from 1 to {most}',
  'problem.loadedAlready': '{given} is already loaded; every ink needs a name of its own',

  'problem.ranking.aim':
    'is no aim; allowed are {allowed}, null for none, and an object with colours (one of these) and overprints (a list of lists of two or more ink names)',
  'problem.ranking.weight': 'is not allowed; allowed are numbers from 0 to {most} for {allowed}',
  'problem.ranking.notLoaded': 'names an ink that is not loaded; loaded are {allowed}',
  'problem.ranking.twice': 'names an ink twice; an ink prints once on a spot',

  'problem.event.number': `is not allowed; allowed are ${range}`,
  'problem.event.kind': 'is no event; allowed are {allowed}',
  'problem.event.name': 'is no name of an ink',
  'problem.event.list': 'is not allowed; allowed is a list of events',
  'problem.event.tooMany': 'holds too many events; allowed are up to {most}',
  'problem.event.field': 'is missing, or not known here',
  'problem.event.ink': 'is no loaded ink; loaded are {allowed}',
  'problem.event.nothing': 'changes nothing; state tack, film, temperature or dampening',

  'problem.shelf.text': 'is no name; allowed is a text',
  'problem.shelf.name': 'is no name; allowed is a text of 1 to {most} characters without the word "on" standing alone',
  'problem.shelf.list': 'is no list; allowed is a list',
  'problem.shelf.tooMany': 'holds too many entries; allowed are {most}',
  'problem.shelf.unknown': 'not known here; allowed are {allowed}',
  'problem.shelf.missing': 'is missing',
  'problem.shelf.object': 'is no object; allowed is one with {allowed}',
  'problem.shelf.number': 'is no number',
  'problem.shelf.choice': 'is nothing that fits here; allowed are {allowed}',
  'problem.shelf.kind': 'is no shelf; allowed is "{allowed}"',
  'problem.shelf.version': 'is not a version this program reads; allowed is {allowed}',
  'problem.shelf.tooLarge': 'is larger than {most} MB; a shelf is far smaller',
  'problem.shelf.json': 'is not JSON; allowed is the file of a shelf as it was saved',
  'problem.shelf.supplied': '"{name}" is a paper as supplied; an own paper needs another name',
  'problem.shelf.twice': '"{name}" is on the shelf already; every entry needs a name of its own',

  'problem.file.tooLong': 'The file has {count} characters; allowed are {most}.',
  'problem.file.json': 'The file is not JSON; allowed is a file that was saved by this program.',
  'problem.file.noObject': 'The file holds no object; allowed is a file that was saved by this program.',
  'problem.file.format': `${given} is no format of this program; allowed is "{allowed}".`,
  'problem.file.version': `${given} is no version; allowed are whole numbers up to {most}.`,
  'problem.file.newer':
    'The file is of version {version}, made by a newer version of this program; this one reads files up to version {most}.',
  'problem.file.neverWas': 'There has been no version {version} of this file; allowed is {most}.',
  'problem.file.tooLarge': 'It has {size, number} kB; allowed are {most, number}.',
  'problem.file.unreadable': 'The browser could not read it: {reason}',
  'problem.file.object': `${given} is not allowed; ${part} has the fields {allowed}`,
  'problem.file.field': `{given} is no field of ${part} and is left out; allowed are {allowed}${nearest}`,
  'problem.file.list': `${given} is not allowed; allowed is a list of ${items}`,
  'problem.file.tooMany': `{count} ${items} are too many; allowed are {most}, and those after them are left out`,
  'problem.file.text': 'is no text',
  'problem.file.longText': 'is longer than {most} characters',
  'problem.file.drill': 'is no drill; allowed is one with level and seed',
  'problem.file.sceneNumber': 'is no number of a scene; allowed is one with of, ink and below',
  'problem.file.progress': 'is no progress; allowed is one with a lesson',
  'problem.file.deep': 'is no progress; allowed are up to {most} levels, and numbers that JSON can write',
  'problem.file.noSetUp': 'is missing; it cannot be shown without its set-up',
} as const
