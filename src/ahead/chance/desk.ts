/** Lists of one practice, by place among those who came; those with seats have a figure for each seat column. */
export type Desk = {
  /** What each may get of a seat column above (below: negative) its even share. */
  readonly least: Float64Array
  readonly most: Float64Array
  /** What each gets. */
  readonly lean: Float64Array
  /** Seconds that each is there and has no seat. */
  readonly room: Float64Array
  /** What is balanced just now. */
  readonly wish: Float64Array
  readonly low: Float64Array
  readonly high: Float64Array
}
