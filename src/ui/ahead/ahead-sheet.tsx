import { formatDay } from '#ui/format-day'

type AheadSheetProps = {
  readonly squadName: string
  readonly termName: string
  readonly madeOn: string
  readonly practices: readonly {
    readonly id: string
    readonly day: string
    readonly week: number
    readonly startsAt: string | null
    readonly place: string
    readonly isFirm: boolean
    readonly theme: string | null
    readonly design: string | null
    readonly sentence: string
  }[]
}

/** More rows take smaller letters, so that twenty practices stay on one page: tried out on A4. */
const manyRows = 14

/** The term plan on one page of A4: weeks, what each practice is about, and why. */
export function AheadSheet({ squadName, termName, madeOn, practices }: AheadSheetProps) {
  return (
    <article className="ahead-sheet">
      <header>
        <h1 className="text-xl font-semibold">
          Weeks ahead: {squadName}, {termName}
        </h1>
        <p className="text-sm">
          As of {formatDay(madeOn)}. The first four are firm, the rest is a sketch. What is said is to be
          expected if everyone comes as often as so far.
        </p>
      </header>
      <table
        className={`mt-3 w-full border-collapse text-left ${practices.length > manyRows ? 'text-[0.625rem] leading-[1.15] [&_td]:py-0.5 [&_th]:py-0.5' : 'text-xs leading-snug [&_td]:py-1 [&_th]:py-1'}`}
      >
        <thead>
          <tr className="border-b-2 border-ink">
            <th scope="col" className="pr-2">
              Week
            </th>
            <th scope="col" className="pr-2">
              Practice
            </th>
            <th scope="col" className="w-40 pr-2">
              Theme and design
            </th>
            <th scope="col" className="max-sm:hidden print:table-cell">
              Why
            </th>
          </tr>
        </thead>
        <tbody>
          {practices.map((own, index) => (
            <tr key={own.id} className="keep-together border-b border-rule-strong align-top">
              <td className="pr-2">{practices[index - 1]?.week === own.week ? '' : own.week}</td>
              <th scope="row" className="whitespace-nowrap pr-3 font-normal">
                <strong>{formatDay(own.day)}</strong>
                <span className="block">
                  {[own.startsAt, own.isFirm ? 'firm' : 'sketch'].filter(Boolean).join(' · ')}
                </span>
              </th>
              <td className="pr-3">
                <strong>{own.theme ?? 'not planned yet'}</strong>
                {own.design ? <span className="block">{own.design}</span> : null}
              </td>
              <td className="max-sm:hidden print:table-cell">{own.sentence}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </article>
  )
}
