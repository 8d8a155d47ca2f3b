/** What the views of orders, runs and trials look like alike. */
import { css } from 'lit'
import { miniStairStyles } from '../mini-stair.ts'

const own = css`
  main {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
    align-content: start;
    padding: 8px;
  }
  h2 {
    font-size: 1.0625rem;
  }
  h3 {
    margin-top: 12px;
  }
  h3:first-child {
    margin-top: 0;
  }
  summary h3 {
    display: inline;
  }
  details {
    margin-top: 8px;
  }
  p {
    max-width: 70ch;
  }
  p,
  .row {
    margin-top: 8px;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 16px;
    align-items: end;
  }
  label {
    font-size: 0.875rem;
    line-height: 1.25rem;
  }
  label > select,
  label > input:not([type='checkbox'], [type='range']) {
    display: block;
  }
  label.check {
    display: inline-flex;
    gap: 4px;
    align-items: center;
    min-height: 1.75rem;
    font-size: 0.9375rem;
  }
  .mark {
    padding-inline-start: 8px;
    border-inline-start: 4px solid var(--graphite);
  }
  .scroll {
    position: relative;
    overflow-x: auto;
    max-width: 100%;
    margin-top: 8px;
  }
  progress {
    width: 10rem;
    accent-color: var(--accent);
  }
  .first {
    background: var(--accent);
    color: var(--on-accent);
  }
  .first:hover:not(:disabled) {
    background: var(--accent);
    text-decoration: underline;
  }
  td.words,
  th.words {
    text-align: start;
  }
  @media (pointer: coarse) {
    label.check {
      min-height: 44px;
    }
  }
`

export const ordersStyles = [miniStairStyles, own]
