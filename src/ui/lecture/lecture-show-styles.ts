/** A lecture fills the window; what is not for the class comes up with the pointer or the keyboard, and goes by itself. */
import { css } from 'lit'

export const lectureShowStyles = css`
  :host {
    position: fixed;
    z-index: 4;
    inset: 0;
    background: var(--panel);
  }
  main {
    display: grid;
    grid-template-rows: minmax(0, 1fr) auto auto;
    height: 100%;
  }
  main:focus {
    outline: none;
  }
  main[data-idle] {
    cursor: none;
  }
  .scenes {
    position: relative;
    min-height: 0;
  }
  tack-scene-stage {
    position: absolute;
    inset: 0;
  }
  .waiting {
    visibility: hidden;
  }
  .note {
    max-height: 32vh;
    overflow: auto;
    padding: 8px 24px;
    border-top: 1px solid var(--line);
    background: var(--field);
    font-size: max(1.25rem, min(1.46vw, 2.6vh));
    line-height: 1.35;
    white-space: pre-line;
    overflow-wrap: anywhere;
  }
  .foot {
    display: flex;
    gap: 1em;
    align-items: center;
    justify-content: space-between;
    min-height: 2.2em;
    padding: 0 1.4em;
    color: var(--soft);
    font-size: max(1.125rem, min(1.32vw, 2.34vh));
  }
  .controls {
    position: absolute;
    z-index: 1;
    inset: auto 0 0;
    padding: 4px 16px;
    border-top: 1px solid var(--edge);
    background: var(--ground);
  }
  main[data-idle] .controls:not(:focus-within) {
    opacity: 0;
    pointer-events: none;
  }
  /* Over a picture this small they would leave nothing of it: they stand below it instead, in one row. */
  @media (width < 45em), (height < 31.25em) {
    main {
      grid-template-rows: minmax(0, 1fr) auto auto auto;
    }
    .foot {
      min-height: 1.6em;
    }
    .controls,
    main[data-idle] .controls:not(:focus-within) {
      position: static;
      min-width: 0;
      opacity: 1;
      pointer-events: auto;
    }
  }
  .told {
    margin-bottom: 8px;
    font-size: 1.0625rem;
  }
  .blank {
    position: absolute;
    z-index: 2;
    inset: 0;
    forced-color-adjust: none;
  }
  .blank.black {
    background: #000;
  }
  .blank.white {
    background: #fff;
  }
`
