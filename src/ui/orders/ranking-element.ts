/** What the elements of the ranking share: the ranking, told of as it grows but not more often than can be read. */
import { colourSolids } from './colour-solids.ts'
import type { Ranking } from '../../session/ranking.ts'
import { rankingOf } from '../../session/ranking.ts'
import { SessionElement } from '../session-element.ts'

/** ms between two pictures of a growing ranking: weighing tens of thousands of orders anew takes a while. */
const between = (orders: number) => (orders > 5000 ? 1500 : 300)

export abstract class RankingElement extends SessionElement {
  #unsubscribe: (() => void) | undefined
  #timer: ReturnType<typeof setTimeout> | undefined

  override connectedCallback(): void {
    super.connectedCallback()
    this.#unsubscribe = this.ranking.subscribe(() => {
      if (this.ranking.state.running !== 'ranking') this.requestUpdate()
      else this.#timer ??= setTimeout(this.#show, between(this.ranking.state.list?.count ?? 0))
    })
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#unsubscribe?.()
    clearTimeout(this.#timer)
    this.#timer = undefined
  }

  readonly #show = (): void => {
    this.#timer = undefined
    this.requestUpdate()
  }

  protected get ranking(): Ranking {
    return rankingOf(this.session)
  }

  /** #rrggbb of each loaded ink's solid, by name */
  protected get colours(): ReadonlyMap<string, string> {
    return colourSolids(this.session)
  }
}
