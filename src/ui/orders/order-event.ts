/** Something is to be done with one order of the ranking. */
export class OrderEvent extends Event {
  readonly act: 'load' | 'compare'
  /** the order's number in the list */
  readonly number: number

  constructor(act: OrderEvent['act'], number: number) {
    super('order')
    this.act = act
    this.number = number
  }
}
