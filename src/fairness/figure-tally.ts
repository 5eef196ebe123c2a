import type { Figure } from '#fairness/account'
import type { StandingFigure } from '#fairness/standing-figure'

const width = 10

/**
 * A figure while it is being summed. The sums of many stand in one array of numbers, `width` apart: a season adds up
 * tens of thousands of rows for one page.
 */
export class FigureTally {
  private constructor(
    private readonly sums: Float64Array,
    private readonly start: number,
  ) {}

  static many(count: number): readonly FigureTally[] {
    const sums = new Float64Array(count * width)
    return Array.from({ length: count }, (_, index) => new FigureTally(sums, index * width))
  }

  addFigure(figure: Figure, due: { readonly dueSeconds: number; readonly dueTurns: number }): void {
    this.add(0, figure.seconds)
    this.add(1, figure.turns)
    this.add(2, figure.fairSeconds)
    this.add(3, figure.fairTurns)
    this.add(4, figure.fullFairSeconds)
    this.add(5, figure.openGoalFairSeconds)
    this.addDue(due)
  }

  addDue(due: { readonly dueSeconds: number; readonly dueTurns: number }): void {
    this.add(6, due.dueSeconds)
    this.add(7, due.dueTurns)
  }

  addFull(seconds: number): void {
    this.add(4, seconds)
  }

  addMean(totalOfMembers: FigureTally, memberCount: number): void {
    this.add(8, totalOfMembers.at(4) / memberCount)
  }

  addTurnsPresent(turns: number): void {
    this.add(9, turns)
  }

  get turnsPresent(): number {
    return this.at(9)
  }

  toFigure(): StandingFigure {
    return {
      seconds: this.at(0),
      turns: this.at(1),
      fairSeconds: this.at(2),
      fairTurns: this.at(3),
      fullFairSeconds: this.at(4),
      openGoalFairSeconds: this.at(5),
      dueSeconds: this.at(6),
      dueTurns: this.at(7),
      membersMeanSeconds: this.at(8),
    }
  }

  private add(place: number, amount: number): void {
    this.sums[this.start + place] = this.at(place) + amount
  }

  private at(place: number): number {
    return this.sums[this.start + place] as number
  }
}
