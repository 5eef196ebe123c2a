/** Practices that a player came to, of those held while it belonged to the squad. */
export type AttendanceRecord = { readonly came: number; readonly held: number }

/**
 * How the chances were reckoned. `drawn`: each own record, drawn towards the squad's. `squad`: the squad's for everyone,
 * since too few have a record, or they do not differ. `none`: nothing was held, and everyone is taken to come.
 */
export type AttendanceMethod = 'drawn' | 'squad' | 'none'

export type ExpectedAttendance = {
  /** By record: the chance, 0-1, to come to a practice. Who has no record gets the squad's. */
  readonly chances: readonly number[]
  /** All that came of all that were held, 0-1. */
  readonly squad: number
  readonly method: AttendanceMethod
}

/** Fewer than so many records cannot be told apart from one another: three are used up by the method itself. */
const leastRecords = 4

/**
 * The chance of each player to come: its own record drawn towards the squad's mean, the more the less is known of it.
 * James-Stein's estimator in its form for unequal counts, with the squad's spread never below zero (positive part).
 * Source: C. Morris, "Parametric Empirical Bayes Inference", J. Am. Stat. Assoc. 78 (1983) 47-55; from memory.
 * Its check: the batters of Efron and Morris, 1977.
 */
export function expectedAttendance(records: readonly AttendanceRecord[]): ExpectedAttendance {
  const known = records.filter(({ held }) => held > 0)
  const held = sum(known.map((record) => record.held))
  if (held === 0) return { chances: records.map(() => 1), squad: 1, method: 'none' }
  const squad = sum(known.map(({ came }) => came)) / held
  const alike: ExpectedAttendance = { chances: records.map(() => squad), squad, method: 'squad' }
  if (known.length < leastRecords || squad === 0 || squad === 1) return alike

  const rates = known.map((record) => ({
    rate: record.came / record.held,
    variance: (squad * (1 - squad)) / record.held,
  }))
  const spread = spreadBetween(rates)
  if (spread === 0) return alike
  const mean = weighted(rates, spread).mean
  const correction = (known.length - 3) / (known.length - 1)
  const chances = records.map((record) => {
    if (record.held === 0) return mean
    const variance = (squad * (1 - squad)) / record.held
    const drawn = (correction * variance) / (variance + spread)
    return mean + (1 - drawn) * (record.came / record.held - mean)
  })
  return { chances, squad, method: 'drawn' }
}

type Rate = { readonly rate: number; readonly variance: number }

const bisections = 60

/**
 * How much players differ, as a variance of their true rates: where Σ (rate − mean)² ÷ (own variance + spread) = k − 1.
 * That is where Morris's iteration rests; the left side falls as the spread grows, so halving finds it. 0: no more than
 * luck explains.
 */
function spreadBetween(rates: readonly Rate[]): number {
  const wanted = rates.length - 1
  if (weighted(rates, 0).distance <= wanted) return 0
  let [low, high] = [0, 1]
  for (let step = 0; step < bisections; step++) {
    const middle = (low + high) / 2
    if (weighted(rates, middle).distance > wanted) low = middle
    else high = middle
  }
  return (low + high) / 2
}

function weighted(rates: readonly Rate[], spread: number): { mean: number; distance: number } {
  const weights = rates.map(({ variance }) => 1 / (variance + spread))
  const mean = sum(rates.map(({ rate }, at) => rate * (weights[at] ?? 0))) / sum(weights)
  const distance = sum(rates.map(({ rate }, at) => (rate - mean) ** 2 * (weights[at] ?? 0)))
  return { mean, distance }
}

const sum = (numbers: readonly number[]) => numbers.reduce((all, one) => all + one, 0)
