/** What the panels of the strip, the instruments and the drills have in common: rows of controls, large figures, marked lines. */
import { css } from 'lit'

export const workStyles = css`
  h2 {
    font-size: 1.0625rem;
  }
  h3 {
    margin-top: 12px;
  }
  :is(.row, p) + h2 {
    margin-top: 16px;
  }
  p {
    max-width: 90ch;
  }
  p + p,
  .row,
  .row + :is(p, .mark) {
    margin-top: 8px;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 16px;
    align-items: end;
  }
  .figure {
    font-size: var(--reading);
    font-weight: 600;
    line-height: 2rem;
  }
  .mark {
    padding-inline-start: 8px;
    border-inline-start: 4px solid var(--graphite);
  }
  .scroll {
    overflow-x: auto;
    max-width: 100%;
  }
`
