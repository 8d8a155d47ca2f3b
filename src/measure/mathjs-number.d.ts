/** The library's build for plain numbers ships without types; it is a part of the whole, and typed like it. */
declare module 'mathjs/number' {
  export * from 'mathjs'
}
