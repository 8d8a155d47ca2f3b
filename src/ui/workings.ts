/** How the nip looked at is computed: each law, then the same law with the present numbers, then what is left out. */
import { css, html, nothing } from 'lit'
import { paperModulus } from '../physics/paper.ts'
import { referenceSpeed, referenceTemperature, referenceThickness } from '../physics/pull.ts'
import { inkLetters } from '../session/letters.ts'
import type { FilmAccount } from '../press/account.ts'
import type { FilmPlace } from './film-name.ts'
import { filmIndex } from './film-name.ts'
import './formula.ts'
import { say, sayNumber, sayPercent } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'
import {
  amountWorking,
  bareLaw,
  contactLaw,
  contactWorking,
  paperLaw,
  paperWorking,
  pullLaw,
  pullWorkings,
  trapWorking,
  weakestLaw,
  weakestWorkings,
  wetLaw,
} from './workings-steps.ts'

const limits = ['teaching', 'numbers', 'setting', 'field', 'rest'] as const

export class Workings extends SessionElement {
  static override styles = [
    sharedStyles,
    css`
      section {
        margin-top: 16px;
      }
      h3 {
        font-size: 1.0625rem;
      }
      .note,
      li {
        margin-top: 4px;
        font-size: 0.9375rem;
        line-height: 1.25rem;
      }
      ul {
        padding-inline-start: 20px;
        list-style: disc;
      }
    `,
  ]

  override render() {
    const { setUp, results, playback, patch } = this.session
    const { unit } = playback
    const { run, readings } = results
    const names = setUp.inks.map((ink) => ink.name)
    const letters = inkLetters(names)
    const indexOf = (film: FilmAccount, place: FilmPlace) => filmIndex(film, place, letters)
    const account = results.accounts(patch)[unit]
    const amount = amountWorking(run, account)
    const trap = trapWorking(readings, unit)
    return html`
      <p>${say('workings.of', { unit: unit + 1, name: names[unit] })}</p>
      ${this.#step(
        'pull',
        pullLaw,
        pullWorkings(run, account, indexOf).map(({ tex }) => tex),
      )}
      <p class="note">
        ${say('workings.pullNote', {
          speed: referenceSpeed,
          thickness: referenceThickness,
          temperature: referenceTemperature,
        })}
      </p>
      ${this.#step('weakest', weakestLaw, weakestWorkings(run, account, indexOf))}
      <p class="note">${say('workings.weakestNote', { evenness: sayNumber(setUp.paper.evenness, 0, 2) })}</p>
      ${this.#step('paper', paperLaw, [paperWorking(account)])}
      <p class="note">
        ${say('workings.paperNote', {
          strength: sayNumber(account.strength, 1),
          modulus: paperModulus,
          torn: sayPercent(account.torn),
        })}
      </p>
      ${this.#step('contact', contactLaw, [contactWorking(run, account)])}
      <p class="note">${say('workings.contactNote')}</p>
      ${
        amount
          ? this.#step('amount', amount.bare ? bareLaw : wetLaw, [amount.tex])
          : html`<section><h3>${say('workings.amount')}</h3></section>`
      }
      <p class="note">
        ${say(amount ? (amount.bare ? 'workings.amountBare' : 'workings.amountWet') : 'workings.amountIdle')}
      </p>
      ${
        trap === null
          ? nothing
          : html`${this.#step('trap', trap, [])}
              <p class="note">${say('workings.trapNote', { later: names[unit], earlier: names[unit - 1] })}</p>`
      }
      <section>
        <h3>${say('workings.limits')}</h3>
        <ul>
          ${limits.map((limit) => html`<li>${say(`workings.limit.${limit}`)}</li>`)}
        </ul>
      </section>
    `
  }

  #step(name: 'pull' | 'weakest' | 'paper' | 'contact' | 'amount' | 'trap', law: string, present: readonly string[]) {
    return html`<section>
      <h3>${say(`workings.${name}`)}</h3>
      ${[law, ...present].map((tex) => html`<tack-formula .tex=${tex}></tack-formula>`)}
    </section>`
  }
}

customElements.define('tack-workings', Workings)
