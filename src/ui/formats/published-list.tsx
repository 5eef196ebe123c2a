import type { PublishedFormat } from '#match/format/published-format'
import type { SendForm } from '#ui/entry/send-form'
import { formatInShort } from '#ui/formats/format-sentences'
import { FormatTable } from '#ui/formats/format-table'
import { sourceText } from '#ui/formats/source-text'
import { Details } from '#ui/page/details'
import { OneButtonForm } from '#ui/page/one-button-form'

type PublishedListProps = {
  readonly published: readonly PublishedFormat[]
  /** Null: the viewer may look only. */
  readonly take: SendForm | null
}

/** Formats to take over, each with all it says and where it is from. */
export function PublishedList({ published, take }: PublishedListProps) {
  return (
    <ul className="max-w-3xl">
      {published.map(({ key, format }) => (
        <li key={key}>
          <Details
            summary={
              format.source ? (
                <>
                  {format.name} <span className="font-normal text-soft">({formatInShort(format)})</span>
                </>
              ) : (
                format.name
              )
            }
          >
            {format.source ? (
              <p className="mb-2 max-w-prose break-words">{sourceText(format.source)}</p>
            ) : null}
            <FormatTable format={format} />
            {take ? (
              <div className="mt-3">
                <OneButtonForm
                  send={take}
                  fields={{ key }}
                  label="Take it over"
                  name={`Take it over: ${format.name}`}
                />
              </div>
            ) : null}
          </Details>
        </li>
      ))}
    </ul>
  )
}
