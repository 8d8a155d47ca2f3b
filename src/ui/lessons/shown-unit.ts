/** Units as lesson files write them, the way the page shows them. */
const shown: Readonly<Record<string, string>> = { um: 'µm', degC: '°C', density: '' }

export function shownUnit(unit: string): string {
  return shown[unit] ?? unit
}
