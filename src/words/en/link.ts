/**
 * What can be wrong with a link, and what is done instead. {field} is a word of the link, {of} says whose it is, {name}
 * the ink's name where it is an ink's.
 */
const what = `{field, select,
  tack {the tack} film {the film} cover {the coverage} temp {the temperature} water {the dampening}
  soiled {the share of foreign ink} dry {whether the sheet is dry before it} lab {the colour} rgb {the colour}
  strength {the surface strength} absorb {the absorbency} even {the evenness} rate {the contact rate}
  hold {the hold limit} free {the free split} gain {the setting gain} time {the setting time} wet {the loss when wet}
  speed {the speed} interval {the time between units} waterless {whether it is waterless} name {the name}
  seed {the seed} sheet {the sheet} unit {the unit looked at} patch {the units that print} drill {the number of the drill}
  other {{field}}}{of, select, ink { of {name}} paper { of the paper} press { of the press} other {}}`
const usedInstead = '{used, select, none {It is left out.} other {{used} is used instead.}}'
const nearest = '{near, select, none {} other { (did you mean {near}?)}}'

export const link = {
  'link.tooLong':
    'The link is {length, number} characters long; links of this program have at most {most, number}. Only its beginning is read.',
  'link.newer':
    'The link was made by a newer version of this program (format {given}; this one reads format {known}). What is understood of it is shown.',
  'link.version': 'The link gives “{given}” as the version of its format; allowed is {known}. It is read as that.',
  'link.twice': 'The link gives {word} twice; the first is used.',
  'link.unknownWord': `The link has “{given}”, which is not known here${nearest}; allowed are {allowed}. It is left out.`,
  'link.unknownPart': `The link has “{given}” {of, select, ink {for the ink {name}} paper {for the paper} other {for the press}}, which is not known there${nearest}; allowed are {allowed}. It is left out.`,
  'link.number': `The link gives “{given}” for ${what}; allowed are {whole, select, yes {whole } other {}}numbers from {least} to {most}{unit, select, none {} other { {unit}}}. ${usedInstead}`,
  'link.flag': `The link gives “{given}” for ${what}; allowed are yes and no. ${usedInstead}`,
  'link.name': `The link gives “{given}” for ${what}; allowed is a text of 1 to {most} characters on one line, without the word “on” standing alone. ${usedInstead}`,
  'link.lab': `The link gives “{given}” for ${what}; allowed is L/a/b, such as 60/-20/35, with L from 0 to 100, a and b from -150 to 150. ${usedInstead}`,
  'link.rgb': `The link gives “{given}” for ${what}; allowed are six hexadecimal digits, such as e3711b. ${usedInstead}`,
  'link.choice': `The link gives “{given}” for {word}${nearest}; allowed are {allowed}. ${usedInstead}`,
  'link.list': `The link gives “{given}” for {word}${nearest}; allowed are {allowed}. That part is left out.`,
  'link.id':
    'The link gives “{given}” for {word}; allowed are small letters and digits in words joined by hyphens. It is left out.',
  'link.units': `The link gives “{given}” for ${what}; allowed are units of this press, 1 to {most}. ${usedInstead}`,
  'link.scene':
    'The link gives “{given}” for the scene of the lecture; allowed are whole numbers from 1 to {most}. It is left out.',
  'link.inkName':
    'The link gives “{given}” as the name of ink {unit}; allowed is a text of 1 to {most} characters on one line, without the word “on” standing alone. It is called {used}.',
  'link.sameName':
    'The link gives two inks the name {given}; every ink needs a name of its own. The second is called {used}.',
  'link.tooFewInks':
    'The link gives {count, plural, =0 {no ink} one {one ink} other {# inks}}; allowed are {least} to {most}. The usual four are loaded.',
  'link.tooManyInks':
    'The link gives {count, number} inks; allowed are {least} to {most}. Those after the {most}th are left out.',
  'link.measures':
    'The units of measure that the link asks for could not be fetched; numbers stay in the usual ones. Load the page again when the connection is back.',
} as const

export type LinkKey = keyof typeof link
