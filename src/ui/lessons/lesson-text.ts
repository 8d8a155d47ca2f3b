/** Edits of a lesson's text that the author's buttons make: whole lines put in, everything else left as typed. */

/** The text with its field `start` replaced by `start` (lines of YAML), or with it put in before the steps. */
export function withStart(text: string, start: string): string {
  const lines = text.split('\n')
  const put = start.trimEnd().split('\n')
  const at = lines.findIndex((line) => /^start\s*:/.test(line))
  if (at < 0) {
    const steps = lines.findIndex((line) => /^steps\s*:/.test(line))
    return lines.toSpliced(steps < 0 ? lines.length : steps, 0, ...put).join('\n')
  }
  const after = lines.findIndex((line, index) => index > at && /^[^\s#]/.test(line))
  let end = after < 0 ? lines.length : after
  while (end > at + 1 && /^(#.*)?$/.test(lines[end - 1].trim())) end--
  return lines.toSpliced(at, end - at, ...put).join('\n')
}

export interface Inserted {
  text: string
  /** from 1 */
  line: number
}

/** The text with an expectation put in below the line at `caret`, indented as an entry of the nearest `expect` above. */
export function withExpectation(text: string, caret: number, expectation: string): Inserted {
  const lines = text.split('\n')
  const line = text.slice(0, caret).split('\n').length - 1
  const above = lines.slice(0, line + 1).findLast((each) => /^\s*expect\s*:/.test(each))
  const indent = above === undefined ? '      ' : `${/^\s*/.exec(above)?.[0] ?? ''}  `
  return { text: lines.toSpliced(line + 1, 0, indent + expectation.trim()).join('\n'), line: line + 2 }
}

/** How many characters stand before a place. */
export function offsetOf(text: string, line: number, col: number): number {
  const before = text.split('\n').slice(0, line - 1)
  return before.reduce((sum, each) => sum + each.length + 1, 0) + col - 1
}
