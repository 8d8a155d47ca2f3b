/** The instruments: where the tack number, the surface strength and the mass trap of a laboratory come from. */
import { html } from 'lit'
import { tackExerciseKinds } from '../../drill/tack-exercise.ts'
import type { RigName, TackTask } from '../../session/rig-desk.ts'
import { rigNames } from '../../session/rig-desk.ts'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { viewStyles } from '../view-styles.ts'
import './exercise-panel.ts'
import './pick-rig.ts'
import './proof-rig.ts'
import { RigElement } from './rig-element.ts'
import { rigStyles } from './rig-styles.ts'
import { exerciseOf, samplesOf } from './samples.ts'
import './tackmeter-readings.ts'
import './tackmeter-rig.ts'

const tasks: readonly TackTask[] = ['free', ...tackExerciseKinds]

export class InstrumentsView extends RigElement {
  static override styles = [sharedStyles, viewStyles, rigStyles]

  override render() {
    const { rig } = this.desk.state
    return html`<main>
      <div class="panel head">
        <h2>${say('rig.title')}</h2>
        <tack-choice
          .legend=${say('rig.parts')}
          .options=${rigNames.map((value) => ({ value, label: say(`rig.part.${value}`) }))}
          .value=${rig}
          @choose=${({ value }: ChooseEvent) => this.desk.set({ rig: value as RigName })}
        ></tack-choice>
      </div>
      ${this.#content(rig)}
    </main>`
  }

  #content(rig: RigName) {
    const { session } = this
    switch (rig) {
      case 'tackmeter':
        return this.#tackmeter()
      case 'pick test':
        return html`<tack-pick-rig class="panel" .session=${session}></tack-pick-rig>`
      case 'proof':
        return html`<tack-proof-rig class="panel" .session=${session}></tack-proof-rig>`
    }
  }

  #tackmeter() {
    const { session, desk } = this
    const exercise = exerciseOf(desk.state)
    const samples = samplesOf(session, exercise)
    return html`
      <div class="panel">
        <tack-choice
          drawLegend
          .legend=${say('rig.task')}
          .options=${tasks.map((value) => ({ value, label: say(`rig.task.${value}`) }))}
          .value=${desk.state.task}
          @choose=${({ value }: ChooseEvent) => this.desk.set({ task: value as TackTask, readings: [] })}
        ></tack-choice>
        ${
          exercise
            ? html`<tack-exercise-panel
                .session=${session}
                .exercise=${this.#kept(exercise)}
                .samples=${samples}
              ></tack-exercise-panel>`
            : html`<p>${say('rig.task.free.about')}</p>`
        }
      </div>
      <tack-tackmeter-rig
        class="panel"
        .session=${session}
        .samples=${samples}
        .hidesLaw=${exercise !== null}
      ></tack-tackmeter-rig>
      <tack-tackmeter-readings class="panel" .session=${session}></tack-tackmeter-readings>
    `
  }

  /** One object for one exercise, so that its panel knows when another begins. */
  #kept<Exercise>(exercise: Exercise): Exercise {
    const { task, exercise: seed } = this.desk.state
    const key = `${task} ${seed}`
    if (this.#exercise?.key !== key) this.#exercise = { key, exercise }
    return this.#exercise.exercise as Exercise
  }
  #exercise: { key: string; exercise: unknown } | undefined
}

customElements.define('tack-instruments-view', InstrumentsView)
