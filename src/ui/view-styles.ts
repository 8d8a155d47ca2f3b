/** How views that show one of several parts are laid out: a head to choose in, and panels below each other. */
import { css } from 'lit'

export const viewStyles = css`
  :host {
    padding: 8px;
  }
  main {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
    align-content: start;
  }
  .head {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 24px;
    align-items: center;
  }
`
