/** Panels of the instruments, their rows of controls and their figures. */
import { css } from 'lit'
import { workStyles } from '../work-styles.ts'

export const rigStyles = [
  workStyles,
  css`
    .row > label,
    .field {
      font-size: 0.875rem;
      line-height: 1.25rem;
    }
    .field select {
      display: block;
      max-width: 100%;
    }
    tack-number-field {
      width: 8rem;
    }
    tack-choice {
      max-width: 100%;
      overflow-x: auto;
    }
    figure {
      min-width: 0;
      margin: 8px 0 0;
    }
    figcaption {
      font-weight: 650;
    }
    .check {
      display: flex;
      gap: 4px;
      align-items: center;
      font-size: 0.9375rem;
    }
    details {
      margin-top: 8px;
    }
  `,
]
