/** A label: a player at a node, with so much attack, defence and (by index) keeping so far, as cheaply as is known. */
export type LabelPool = {
  /** Labels of one turn after the other; `node`, `attack`, `defend`, `keep`, `cost`, `bound`, `before`, `arc` by label. */
  node: Int32Array
  attack: Int32Array
  defend: Int32Array
  keep: Int32Array
  before: Int32Array
  arc: Int32Array
  cost: Float64Array
  bound: Float64Array
  count: number
  /** Labels before this belong to earlier turns. */
  layerStart: number
  table: Int32Array
}

const firstSize = 1 << 12

/** Room for labels, made once and used for one search after the other. */
export function labelPool(): LabelPool {
  return {
    node: new Int32Array(firstSize),
    attack: new Int32Array(firstSize),
    defend: new Int32Array(firstSize),
    keep: new Int32Array(firstSize),
    before: new Int32Array(firstSize),
    arc: new Int32Array(firstSize),
    cost: new Float64Array(firstSize),
    bound: new Float64Array(firstSize),
    count: 0,
    layerStart: 0,
    table: new Int32Array(firstSize).fill(-1),
  }
}

/** Begins the labels of the next turn. */
export function beginLayer(pool: LabelPool): void {
  pool.layerStart = pool.count
  pool.table.fill(-1)
}

/** The label of this turn at a node with these totals; a new one costs infinitely much. */
export function labelAt(pool: LabelPool, node: number, attack: number, defend: number, keep: number): number {
  const mask = pool.table.length - 1
  let hash = Math.imul(
    Math.imul(Math.imul(node * 31 + keep, 0x9e3779b1) + attack, 0x85ebca6b) + defend,
    0xc2b2ae35,
  )
  hash = (hash ^ (hash >>> 15)) & mask
  for (;;) {
    const label = pool.table[hash] as number
    if (label < 0) break
    if (
      pool.attack[label] === attack &&
      pool.defend[label] === defend &&
      pool.keep[label] === keep &&
      pool.node[label] === node
    )
      return label
    hash = (hash + 1) & mask
  }
  const label = pool.count
  if (label === pool.cost.length) grow(pool)
  pool.node[label] = node
  pool.attack[label] = attack
  pool.defend[label] = defend
  pool.keep[label] = keep
  pool.cost[label] = Number.POSITIVE_INFINITY
  pool.count += 1
  pool.table[hash] = label
  if ((pool.count - pool.layerStart) * 2 > pool.table.length) rehash(pool)
  return label
}

/** Moves a label of this turn to another place in the pool: when some are dropped, the rest close up. */
export function moveLabel(pool: LabelPool, from: number, to: number): void {
  pool.node[to] = pool.node[from] as number
  pool.attack[to] = pool.attack[from] as number
  pool.defend[to] = pool.defend[from] as number
  pool.keep[to] = pool.keep[from] as number
  pool.before[to] = pool.before[from] as number
  pool.arc[to] = pool.arc[from] as number
  pool.cost[to] = pool.cost[from] as number
  pool.bound[to] = pool.bound[from] as number
}

function grow(pool: LabelPool): void {
  const size = pool.cost.length * 2
  for (const name of ['node', 'attack', 'defend', 'keep', 'before', 'arc'] as const) {
    const larger = new Int32Array(size)
    larger.set(pool[name])
    pool[name] = larger
  }
  for (const name of ['cost', 'bound'] as const) {
    const larger = new Float64Array(size)
    larger.set(pool[name])
    pool[name] = larger
  }
}

function rehash(pool: LabelPool): void {
  const table = new Int32Array(pool.table.length * 4).fill(-1)
  const mask = table.length - 1
  for (let label = pool.layerStart; label < pool.count; label += 1) {
    const [node, keep] = [pool.node[label] as number, pool.keep[label] as number]
    const [attack, defend] = [pool.attack[label] as number, pool.defend[label] as number]
    let hash = Math.imul(
      Math.imul(Math.imul(node * 31 + keep, 0x9e3779b1) + attack, 0x85ebca6b) + defend,
      0xc2b2ae35,
    )
    hash = (hash ^ (hash >>> 15)) & mask
    while ((table[hash] as number) >= 0) hash = (hash + 1) & mask
    table[hash] = label
  }
  pool.table = table
}
