/** Moving one ink to another unit. */

/** The list with the item at `from` put in at `to`; those between move up or down. */
export function moved<Item>(items: readonly Item[], from: number, to: number): Item[] {
  return items.toSpliced(from, 1).toSpliced(to, 0, items[from])
}
