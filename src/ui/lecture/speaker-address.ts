/** The address of the speaker's window: the same page, with the lecture it belongs to. */
const start = '#view=speaker'

export function speakerAddress(lecture: string): string {
  return `${location.href.replace(/#.*$/, '')}${start}&lecture=${lecture}`
}

/** The lecture a speaker's window belongs to; null where the address is that of the page itself. */
export function lectureOfSpeaker(hash: string): string | null {
  if (hash !== start && !hash.startsWith(`${start}&`)) return null
  return new URLSearchParams(hash.slice(1)).get('lecture') ?? ''
}
