/** Text of the catalogue without the marks of words to be explained. */
export function plainText(text: string): string {
  return text.replace(/\[\[[^|\]]+\|([^\]]+)\]\]/g, '$1')
}
