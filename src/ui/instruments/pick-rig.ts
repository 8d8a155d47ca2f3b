/** The pick test to work with: a strip is printed, the learner marks where picking begins, and that is judged. */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import type { Paper } from '../../physics/paper.ts'
import { paperNames, papers } from '../../physics/paper.ts'
import type { MarkVerdict, Oil, PickTest, TornSpot } from '../../physics/pick-test.ts'
import {
  endVelocities,
  judgeMark,
  oils,
  oilViscosity,
  printStrip,
  resistanceOfMark,
  strengthOfResistance,
  strip,
  stripStrength,
  velocityAt,
} from '../../physics/pick-test.ts'
import { average, repeatability } from '../../physics/repeatability.ts'
import type { MarkedStrip } from '../../session/rig-desk.ts'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import { linkedText } from '../linked-text.ts'
import '../number-field.ts'
import { KeptFocus } from '../kept-focus.ts'
import { say, sayName, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import type { MarkEvent } from './pick-strip.ts'
import './pick-strip.ts'
import { RigElement } from './rig-element.ts'
import { rigStyles } from './rig-styles.ts'

/** mm of strip in one row of the table */
const stretch = 10
/** The paper on the press, among the names of papers as supplied. */
const onPress = 'on the press'

export class PickRig extends RigElement {
  static override properties: PropertyDeclarations = {
    ...RigElement.properties,
    _paper: { state: true },
    _oil: { state: true },
    _end: { state: true },
    _wet: { state: true },
    _test: { state: true },
    _place: { state: true },
    _verdict: { state: true },
  }
  static override styles = [
    sharedStyles,
    tableStyles,
    rigStyles,
    css`
      .place {
        flex: 1 1 100%;
        max-width: 62.5rem;
      }
      input[type='range'] {
        display: block;
        width: 100%;
        border: 0;
        background: none;
      }
    `,
  ]

  declare _paper: string
  declare _oil: Oil
  declare _end: number
  declare _wet: boolean
  declare _test: PickTest | null
  /** mm from the start */
  declare _place: number
  /** the verdict on the strip's mark, and that mark; a strip is marked once */
  declare _verdict: { verdict: MarkVerdict; mark: number | null } | null
  #torn: readonly TornSpot[] = []

  constructor() {
    super()
    new KeptFocus(this)
    this._paper = onPress
    this._oil = 'medium'
    this._end = 5
    this._wet = false
    this._test = null
    this._place = 0
    this._verdict = null
  }

  override render() {
    const own = this.session.setUp.paper
    return html`
      <p>${linkedText(say('pickTest.what'))}</p>
      <p class="mark">${say('pickTest.notPressSpeed')}</p>
      <div class="row">
        <label class="field"
          >${say('rig.pick.paper')}
          <select @change=${(event: Event) => (this._paper = (event.target as HTMLSelectElement).value)}>
            ${[onPress, ...paperNames].map(
              (name) =>
                html`<option value=${name} ?selected=${name === this._paper}>
                  ${name === onPress ? say('rig.pick.own', { name: own.name }) : sayName(name)}
                </option>`,
            )}
          </select>
        </label>
        <tack-choice
          drawLegend
          .legend=${say('rig.pick.oil')}
          .options=${oils.map((value) => ({
            value,
            label: say(`rig.pick.oil.${value}`),
            name: say(`pickTest.oil.${value}`, { viscosity: oilViscosity[value] }),
          }))}
          .value=${this._oil}
          @choose=${({ value }: ChooseEvent) => (this._oil = value as Oil)}
        ></tack-choice>
        <tack-number-field
          .label=${say('pickTest.endVelocity')}
          .least=${endVelocities.least}
          .most=${endVelocities.most}
          .step=${endVelocities.step}
          .decimals=${1}
          .value=${this._end}
          .offer=${(value: number | null) => {
            this._end = value ?? this._end
            return null
          }}
        ></tack-number-field>
        <label class="check"
          ><input
            type="checkbox"
            .checked=${this._wet}
            @change=${(event: Event) => (this._wet = (event.target as HTMLInputElement).checked)}
          />${say('pickTest.wet')}</label
        >
        <button type="button" @click=${() => this.#print()}>${say('rig.pick.print')}</button>
      </div>
      <p class="note">${say(`pickTest.oil.${this._oil}`, { viscosity: oilViscosity[this._oil] })}</p>
      ${this._test ? this.#marking(this._test) : html`<p aria-live="polite">${say('rig.pick.none')}</p>`}
      ${this.#results()}
    `
  }

  #marking(test: PickTest) {
    const at = { place: this._place, velocity: velocityAt(test, this._place) }
    return html`
      <p>${say('pickTest.mark')}</p>
      <tack-pick-strip
        .test=${test}
        .torn=${this.#torn}
        .place=${this._place}
        @mark=${({ place }: MarkEvent) => (this._place = place)}
      ></tack-pick-strip>
      <div class="row">
        <label class="field place"
          >${say('rig.pick.place')}
          <input
            type="range"
            min="0"
            max=${strip.length}
            .value=${String(this._place)}
            aria-valuetext=${say('rig.pick.at', at)}
            @input=${(event: Event) => (this._place = Number((event.target as HTMLInputElement).value))}
          />
        </label>
        <output>${say('rig.pick.at', at)}</output>
        <button
          type="button"
          ?disabled=${this._verdict !== null || this._place === 0}
          @click=${() => this.#handIn(test, this._place)}
        >
          ${say('rig.pick.hand')}
        </button>
        <button type="button" ?disabled=${this._verdict !== null} @click=${() => this.#handIn(test, null)}>
          ${say('rig.pick.nowhere')}
        </button>
      </div>
      <div aria-live="polite">${this._verdict ? this.#verdict(test, this._verdict) : nothing}</div>
      ${this.#table(test)}
    `
  }

  #verdict(test: PickTest, { verdict, mark }: NonNullable<PickRig['_verdict']>) {
    const strength = stripStrength(test)
    return html`<p class="mark">${say(`pickTest.verdict.${verdict}`)}</p>
      ${
        mark === null
          ? nothing
          : html`<p>
                ${say('pickTest.resistance', {
                  velocity: velocityAt(test, mark),
                  viscosity: oilViscosity[test.oil],
                  resistance: resistanceOfMark(test, mark),
                })}
              </p>
              <p>${say('rig.pick.toStrength', { strength: strengthOfResistance(resistanceOfMark(test, mark)) })}</p>`
      }
      <p>${say(`rig.pick.trueStrength.${test.wet ? 'wet' : 'dry'}`, { strength })}</p>
      <p class="note">${say('rig.pick.why')}</p>`
  }

  #table(test: PickTest) {
    const rows = Array.from({ length: strip.length / stretch }, (_, row) => {
      const [from, to] = [row * stretch, (row + 1) * stretch]
      const torn = this.#torn.filter(({ place }) => place >= from && place < to).length
      return { from, to, velocity: velocityAt(test, (from + to) / 2), torn }
    })
    const spots = (strip.across * strip.along * stretch) / strip.length
    return html`<details>
      <summary>${say('rig.pick.table')}</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">${say('rig.pick.tablePlace')}</th>
            <th scope="col">${say('rig.pick.tableSpeed')}</th>
            <th scope="col">${say('rig.pick.tableTorn', { spots })}</th>
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            ({ from, to, velocity, torn }) =>
              html`<tr>
                <th scope="row">${from} – ${to}</th>
                <td>${sayNumber(velocity, 2)}</td>
                <td>${torn}</td>
              </tr>`,
          )}
        </tbody>
      </table>
    </details>`
  }

  #results() {
    const groups = groupsOf(this.desk.state.strips)
    if (groups.length === 0) return nothing
    return html`<h3>${say('rig.pick.results')}</h3>
      <div class="scroll" tabindex="0" role="region" aria-label=${say('rig.pick.results')}>
        <table>
          <thead>
            <tr>
              <th scope="col">${say('rig.pick.column.strip')}</th>
              <th scope="col">${say('rig.pick.column.count')}</th>
              <th scope="col">${say('rig.pick.column.velocity')}</th>
              <th scope="col">${say('rig.pick.column.resistance')}</th>
            </tr>
          </thead>
          <tbody>
            ${groups.map((group) => this.#result(group))}
          </tbody>
        </table>
      </div>
      <p class="note">${say('rig.pick.repeats')}</p>`
  }

  #result(group: readonly MarkedStrip[]) {
    const [{ paper, oil, wet }] = group
    const meanOf = (values: readonly number[]) => {
      const { mean } = average(values, 0)
      return say('rig.meanOf', { ...average(values, repeatability.pickVelocity * mean) })
    }
    return html`<tr>
      <th scope="row">${say(wet ? 'rig.pick.wetPaper' : 'rig.pick.dryPaper', { paper, oil })}</th>
      <td>${group.length}</td>
      <td>${meanOf(group.map(({ velocity }) => velocity))}</td>
      <td>${meanOf(group.map(({ resistance }) => resistance))}</td>
    </tr>`
  }

  get #chosenPaper(): Paper {
    const name = paperNames.find((each) => each === this._paper)
    return name ? papers[name] : this.session.setUp.paper
  }

  #print(): void {
    const seed = this.session.setUp.seed + this.nextTaken()
    const test = { paper: this.#chosenPaper, oil: this._oil, endVelocity: this._end, wet: this._wet, seed }
    this.#torn = printStrip(test)
    this._test = test
    this._place = 0
    this._verdict = null
  }

  #handIn(test: PickTest, mark: number | null): void {
    this._verdict = { verdict: judgeMark(test, mark), mark }
    if (mark === null) return
    const marked: MarkedStrip = {
      paper: test.paper.name,
      oil: test.oil,
      wet: test.wet,
      velocity: velocityAt(test, mark),
      resistance: resistanceOfMark(test, mark),
    }
    this.desk.set({ strips: [...this.desk.state.strips, marked] })
  }
}

function groupsOf(strips: readonly MarkedStrip[]): MarkedStrip[][] {
  const groups = new Map<string, MarkedStrip[]>()
  for (const marked of strips) {
    const key = [marked.paper, marked.oil, marked.wet].join(', ')
    groups.set(key, [...(groups.get(key) ?? []), marked])
  }
  return [...groups.values()]
}

customElements.define('tack-pick-rig', PickRig)
