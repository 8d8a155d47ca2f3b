/** Panels of the strip, their headings and large figures. */
import { css } from 'lit'
import { workStyles } from '../work-styles.ts'

export const stripStyles = [
  workStyles,
  css`
    .figure small {
      font-size: 1rem;
      font-weight: 400;
    }
    input[type='file'] {
      max-width: 100%;
      border: 0;
      background: none;
    }
    ::file-selector-button {
      min-height: 1.75rem;
      margin-inline-end: 8px;
      padding: 0 8px;
      border: 1px solid var(--accent);
      border-radius: var(--corner);
      background: var(--field);
      color: var(--accent);
      font: inherit;
      font-weight: 600;
      cursor: pointer;
    }
    @media (pointer: coarse) {
      ::file-selector-button {
        min-height: 44px;
      }
    }
    details {
      margin-top: 8px;
    }
  `,
]
