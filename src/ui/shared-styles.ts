/** What all elements look like alike: controls, headings, focus. */
import { css } from 'lit'

export const sharedStyles = css`
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  :host {
    display: block;
    box-sizing: border-box;
  }
  :host([hidden]) {
    display: none;
  }
  /* Scales, sheets and stairs run from left to right in every language: the press keeps its direction. */
  svg {
    direction: ltr;
  }
  h2,
  h3,
  p,
  ol,
  ul,
  dl,
  dd,
  fieldset {
    margin: 0;
    padding: 0;
    border: 0;
  }
  ol,
  ul {
    list-style: none;
  }
  h2,
  h3,
  legend {
    padding: 0;
    font-size: 0.9375rem;
    font-weight: 650;
    line-height: 1.25rem;
  }
  button,
  select,
  input {
    min-height: 1.75rem;
    border: var(--hairline) solid var(--edge);
    border-radius: var(--corner);
    background: var(--field);
    color: inherit;
    font: inherit;
    font-size: 0.9375rem;
    font-variant-numeric: inherit;
  }
  button {
    padding: 0 8px;
    border-color: var(--accent);
    background: var(--field);
    color: var(--accent);
    font-weight: 600;
    cursor: pointer;
  }
  button:hover:not(:disabled, [aria-disabled='true'], [aria-pressed='true']) {
    background: var(--accent-ground);
  }
  button[aria-pressed='true'] {
    background: var(--accent);
    color: var(--on-accent);
  }
  button[aria-pressed='true']:hover {
    text-decoration: underline;
  }
  input:disabled,
  select:disabled {
    border-color: var(--line);
    background: none;
    color: var(--soft);
    opacity: 1;
    cursor: default;
  }
  button:is(:disabled, [aria-disabled='true']) {
    border-color: var(--line);
    color: var(--soft);
    cursor: default;
  }
  input[type='file'] {
    border: 0;
    background: none;
  }
  ::file-selector-button {
    min-height: 1.75rem;
    margin-inline: 0 8px;
    padding: 0 8px;
    border: var(--hairline) solid var(--accent);
    border-radius: var(--corner);
    background: var(--field);
    color: var(--accent);
    font: inherit;
    font-weight: 600;
    cursor: pointer;
  }
  button.plain {
    border-color: transparent;
    background: none;
  }
  select {
    padding: 0 4px;
    border-color: var(--accent);
    color: var(--accent);
    font-weight: 600;
    cursor: pointer;
  }
  input[type='checkbox'],
  input[type='radio'],
  input[type='range'] {
    accent-color: var(--accent);
  }
  input[type='checkbox'],
  input[type='radio'] {
    width: 1.125rem;
    height: 1.125rem;
    min-height: 0;
    margin: 3px;
  }
  :focus-visible {
    outline: var(--focus) solid var(--accent);
    outline-offset: 1px;
  }
  summary {
    min-height: 1.75rem;
    color: var(--accent);
    font-size: 0.9375rem;
    line-height: 1.75rem;
    cursor: pointer;
  }
  summary h2 {
    display: inline;
    margin-inline-end: 8px;
    font-size: 0.9375rem;
  }
  /* Seen by its ground; where all grounds are alike, by its edge. */
  .panel {
    padding: calc(12px - var(--hairline)) calc(16px - var(--hairline));
    border: var(--hairline) solid var(--panel-edge);
    border-radius: var(--corner);
    background: var(--panel);
  }
  .unit,
  .note {
    color: var(--soft);
    font-size: 0.875rem;
  }
  .unseen {
    position: absolute;
    overflow: hidden;
    width: 1px;
    height: 1px;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  @media (pointer: coarse) {
    button,
    select,
    input:not([type='checkbox'], [type='radio']),
    summary {
      min-height: 44px;
    }
    button {
      min-width: 44px;
    }
    ::file-selector-button {
      min-height: 44px;
    }
    label:has(> input:is([type='checkbox'], [type='radio'])) {
      min-height: 44px;
    }
    summary {
      line-height: 2.75rem;
    }
  }
  /* What is chosen is filled here as well: an outline is left to the focus. */
  @media (forced-colors: active) {
    button[aria-pressed='true'] {
      border-color: Highlight;
      background: Highlight;
      color: HighlightText;
      forced-color-adjust: none;
    }
    :focus-visible {
      outline-color: CanvasText;
    }
  }
`
