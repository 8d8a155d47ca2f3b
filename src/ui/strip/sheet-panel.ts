/** A sheet from a real press: its readings, typed or from a file, the traps in them, and the model fitted to that press. */
import { css, html, nothing } from 'lit'
import type { PressSheet, SheetProblem } from '../../measure/press-sheet.ts'
import { gatherSheet } from '../../measure/press-sheet.ts'
import type { Refused } from '../../measure/said.ts'
import { isRefused } from '../../measure/said.ts'
import { readSheetFile } from '../../measure/sheet-file.ts'
import type { DensityStatus } from '../../colour/data/density-weights.ts'
import type { Desk } from '../../session/desk.ts'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import { linkedText } from '../linked-text.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import './fit-panel.ts'
import './sheet-file-panel.ts'
import './sheet-table.ts'
import './sheet-traps-table.ts'
import { StripElement } from './strip-element.ts'
import { stripStyles } from './strip-styles.ts'
import { told } from './told.ts'

interface ReadSheet {
  readonly sheet: PressSheet | null
  readonly refused: Refused | null
  readonly problems: readonly SheetProblem[]
}

/** What was read last on each desk, and of what: the same sheet stays the same object when a person comes back to it. */
const kept = new WeakMap<Desk, { of: readonly unknown[]; read: ReadSheet }>()

export class SheetPanel extends StripElement {
  static override styles = [
    sharedStyles,
    stripStyles,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 16px 32px;
      }
      @media (min-width: 68.75em) {
        :host {
          grid-template-columns: minmax(0, 9fr) minmax(0, 10fr);
          align-items: start;
        }
        .intro {
          grid-column: 1 / -1;
        }
      }
      .problems li {
        margin-top: 4px;
      }
    `,
  ]

  override render() {
    const { session } = this
    const { sheet, refused, problems } = this.#read()
    const { file, status } = this.desk.state
    const some = sheet !== null && sheet.patches.length > 0
    return html`
      <div class="intro">
        <h2>${linkedText(say('strip.ownSheet'))}</h2>
        <p>${linkedText(say('strip.ownSheetIntro', { inks: this.inkNames.join(', ') }))}</p>
        <div class="row">
          <tack-choice
            drawLegend
            .legend=${say('strip.statusOfYours')}
            .options=${(['E', 'T'] as const).map((value) => ({ value, label: value, name: say(`strip.status.${value}`) }))}
            .value=${status}
            @choose=${({ value }: ChooseEvent) => this.desk.set({ status: value as DensityStatus })}
          ></tack-choice>
        </div>
      </div>
      <div>
        <tack-sheet-file-panel .session=${session}></tack-sheet-file-panel>
        ${
          file
            ? nothing
            : html`<tack-sheet-table
                .session=${session}
                .wrong=${problems.map(({ line }) => this.desk.state.readings[line - 1]?.patch)}
              ></tack-sheet-table>`
        }
      </div>
      <div>
        <div role="status">
          ${refused ? html`<p class="mark">${linkedText(told(refused.refused))}</p>` : nothing}
          ${problems.length > 0 ? this.#problems(problems) : nothing}
        </div>
        ${
          some
            ? html`<tack-sheet-traps-table .session=${session} .sheet=${sheet}></tack-sheet-traps-table>
                <tack-fit-panel .session=${session} .sheet=${sheet}></tack-fit-panel>`
            : refused
              ? nothing
              : html`<p>${say('strip.nothingRead')}</p>`
        }
      </div>
    `
  }

  #problems(problems: readonly SheetProblem[]) {
    return html`<h3>${say('strip.badRows', { count: problems.length })}</h3>
      <ul class="problems">
        ${problems.map((problem) => html`<li class="mark">${this.#problem(problem)}</li>`)}
      </ul>`
  }

  /** A row of a file is told by its line, one that was typed by its patch. */
  #problem({ line, said }: SheetProblem): string {
    const { file, readings } = this.desk.state
    const problem = told(said)
    return file
      ? say('strip.badRow', { line, problem })
      : say('strip.badTypedRow', { patch: readings[line - 1]?.patch ?? '', problem })
  }

  /** What the table or the file says, worked out anew only when one of them or the inks have changed. */
  #read(): ReadSheet {
    const { file, readings } = this.desk.state
    const inks = this.inkNames
    const of = [file, readings, inks.join('\n')]
    const known = kept.get(this.desk)
    if (known && of.every((each, at) => each === known.of[at])) return known.read
    const read = this.#readAnew()
    kept.set(this.desk, { of, read })
    return read
  }

  #readAnew(): ReadSheet {
    const { file, readings } = this.desk.state
    if (!file) {
      const rows = readings.map((cells, at) => ({ line: at + 1, cells }))
      return { ...gatherSheet(rows, this.inkNames), refused: null }
    }
    const read = readSheetFile(file.text, this.inkNames)
    return isRefused(read)
      ? { sheet: null, refused: read, problems: read.problems }
      : { sheet: read.sheet, refused: null, problems: read.problems }
  }
}

customElements.define('tack-sheet-panel', SheetPanel)
