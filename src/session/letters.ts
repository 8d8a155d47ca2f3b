/** One or two letters for each ink, all different, so that inks are told apart without their colour. */

/** K is the trade's letter for black, since B could be blue. */
const tradeLetters: Readonly<Partial<Record<string, string>>> = { black: 'K' }

export function inkLetters(names: readonly string[]): string[] {
  const taken = new Set<string>()
  return names.map((name) => {
    const words = name.trim().toUpperCase().split(/\s+/)
    const initials = words.map((word) => Array.from(word)[0]).join('')
    const options = [tradeLetters[name], initials.slice(0, 2), Array.from(words[0]).slice(0, 2).join('')]
    const numbered = Array.from({ length: 9 }, (_, number) => `${initials[0]}${number + 1}`)
    const letters = [...options, ...numbered].find((option) => option !== undefined && !taken.has(option)) ?? '?'
    taken.add(letters)
    return letters
  })
}
