/** Parts of the library that draws which only have to be run; it gives no types for them. */
declare module 'pixi.js/graphics'
declare module 'pixi.js/text'
