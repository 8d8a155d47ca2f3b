/** What every object inherits: written down before a case and held against it after. */
const inherited = [
  Object.prototype,
  Array.prototype,
  Function.prototype,
  String.prototype,
  Number.prototype,
  Boolean.prototype,
  RegExp.prototype,
  Map.prototype,
  Set.prototype,
  Promise.prototype,
  Error.prototype,
  Date.prototype,
] as object[]

const slots = inherited.map((prototype) =>
  Reflect.ownKeys(prototype).map((key) => [key, Reflect.getOwnPropertyDescriptor(prototype, key)] as const),
)

/** Throws, naming it, when anything was added to, taken from or changed in what every object inherits. */
export function prototypesAreUntouched(): void {
  inherited.forEach((prototype, index) => {
    const whose = prototype.constructor.name
    const found = Reflect.ownKeys(prototype).length
    if (found !== slots[index].length) throw new Error(`The prototype of ${whose} has ${found} slots, not as before.`)
    for (const [key, before] of slots[index]) {
      const now = Reflect.getOwnPropertyDescriptor(prototype, key)
      if (now?.value !== before?.value || now?.get !== before?.get) {
        throw new Error(`The prototype of ${whose} was changed in ${String(key)}.`)
      }
    }
  })
}
