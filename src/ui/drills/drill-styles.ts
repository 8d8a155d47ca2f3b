/** Panels of the drills and what stands in them. */
import { css } from 'lit'
import { workStyles } from '../work-styles.ts'

export const drillStyles = [
  workStyles,
  css`
    h3 {
      margin-top: 8px;
    }
    .first {
      background: var(--accent);
      color: var(--on-accent);
    }
    .first:hover:not(:disabled) {
      background: var(--accent);
      text-decoration: underline;
    }
    tack-choice {
      max-width: 100%;
      overflow-x: auto;
    }
    .field {
      font-size: 0.875rem;
      line-height: 1.25rem;
    }
    .field select {
      display: block;
      max-width: 100%;
    }
    label.pick {
      display: flex;
      gap: 4px;
      align-items: flex-start;
      padding: 2px 0;
      line-height: 1.5rem;
    }
    label.pick input {
      flex: none;
    }
    td {
      white-space: nowrap;
    }
    a {
      color: var(--accent);
      font-weight: 600;
    }
  `,
]
