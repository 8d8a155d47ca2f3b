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
    }
    details {
      margin-top: 8px;
    }
  `,
]
