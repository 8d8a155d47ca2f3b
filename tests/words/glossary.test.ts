/** The glossary holds together: every term can be found, none is explained by itself or in a circle. */
import { describe, expect, test } from 'vitest'
import { termsIn } from '../../src/lesson/terms.ts'
import type { GlossaryTerm } from '../../src/words/glossary-term.ts'
import { glossary as english } from '../../src/words/en/glossary.ts'
import { glossary as spanish } from '../../src/words/es/glossary.ts'

test('every language explains the same terms, and reads on from each to the same others', () => {
  for (const [id, { related }] of Object.entries<GlossaryTerm>(english)) {
    expect(Object.keys(spanish)).toContain(id)
    expect((spanish as Record<string, GlossaryTerm>)[id].related, id).toEqual(related)
  }
})

describe.each<[string, Record<string, GlossaryTerm>]>([
  ['English', english],
  ['Spanish', spanish],
])('%s', (_, glossary) => {
  const entries = Object.entries(glossary)

  test('there are about 80 terms or more', () => {
    expect(entries.length).toBeGreaterThanOrEqual(80)
  })

  test('no two terms share a form', () => {
    const forms = entries.flatMap(([, { term, forms: others }]) => [term, ...others].map((form) => form.toLowerCase()))
    expect(forms.filter((form, at) => forms.indexOf(form) < at)).toEqual([])
  })

  test('no explanation goes round in a circle', () => {
    const uses = new Map(
      entries.map(([id, { sentence }]) => [
        id,
        new Set(
          termsIn(sentence, glossary)
            .map(({ term }) => term)
            .filter((term) => term !== id),
        ),
      ]),
    )
    // Takes away whatever leans only on terms already taken away; what remains leans on itself.
    let left = [...uses.keys()]
    for (let before = -1; before !== left.length;) {
      before = left.length
      const still = new Set(left)
      left = left.filter((id) => [...(uses.get(id) ?? [])].some((term) => still.has(term)))
    }
    expect(left).toEqual([])
  })

  describe.each(entries)('%s', (id, { term, forms, sentence, see, related }) => {
    test('is one plain sentence that does not use its own headword to explain it', () => {
      expect(sentence).toMatch(/^\p{Lu}.*\.$/u)
      expect(sentence.slice(0, -1)).not.toMatch(/[.!?]\s+\p{Lu}/u)
      expect(sentence.length).toBeLessThanOrEqual(140)
      expect(sentence.toLowerCase().startsWith(term.toLowerCase())).toBe(false)
    })

    test('says what to see, and its related terms exist', () => {
      expect(see).toMatch(/^\p{Lu}.*\.$/u)
      expect(related.length).toBeGreaterThan(0)
      for (const other of related) {
        expect(Object.keys(glossary)).toContain(other)
        expect(other).not.toBe(id)
      }
    })

    test('is found in a text under each of its forms', () => {
      for (const form of [term, ...forms]) {
        const found = termsIn(`Look: ${form.toUpperCase()}, here.`, glossary)
        expect(found.map((use) => use.term)).toEqual([id])
      }
    })
  })
})
