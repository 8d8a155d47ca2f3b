/** Whether a key has been pressed on something that Space or Enter means something to already. */
export function pressable(event: KeyboardEvent): boolean {
  const [target] = event.composedPath()
  return target instanceof Element && target.matches('a, button, input, select, summary, textarea')
}
