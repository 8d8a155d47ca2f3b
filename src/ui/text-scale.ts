/**
 * How large a reader has set text in their browser, of the usual 16 px. Style sheets follow it by themselves, in rem and
 * em; what is drawn takes it from here.
 */
export function textScale(): number {
  return parseFloat(getComputedStyle(document.documentElement).fontSize) / 16
}
