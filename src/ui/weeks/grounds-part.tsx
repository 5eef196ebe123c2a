import type { Ground } from '#squad/ground'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { OneButtonForm } from '#ui/page/one-button-form'
import { ReplyForm } from '#ui/page/reply-form'

const places = { place: 'Place', lengthM: 'Length in metres', widthM: 'Width in metres' }

type GroundsPartProps = {
  readonly squadId: string
  readonly grounds: readonly Ground[]
  /** Places of sessions whose size is not known. */
  readonly unknownPlaces: readonly string[]
  readonly set: SendForm
  readonly remove: SendForm
}

/** How large each ground is, and those whose size nobody has said. */
export function GroundsPart({ squadId, grounds, unknownPlaces, set, remove }: GroundsPartProps) {
  return (
    <div className="space-y-5">
      <ul className="max-w-prose">
        {grounds.map(({ place, lengthM, widthM }) => (
          <li
            key={place}
            className="flex flex-wrap items-center justify-between gap-x-4 border-b border-rule py-1"
          >
            <span>
              <strong className="font-semibold">{place}</strong>: {lengthM} × {widthM} m
            </span>
            <OneButtonForm
              send={remove}
              fields={{ squadId, place }}
              label="Take out"
              name={`Take out ${place}`}
            />
          </li>
        ))}
      </ul>
      {unknownPlaces.length > 0 ? (
        <p className="max-w-prose text-soft">
          Taken as large enough for every design: {unknownPlaces.join(', ')}.
        </p>
      ) : null}
      <ReplyForm send={set} refusedTitle="Nothing was changed" waiting="Saving…" places={places}>
        <input type="hidden" name="squadId" value={squadId} />
        <div className="max-w-xl space-y-4">
          <Field
            name="place"
            id="ground-place"
            label={places.place}
            hint="Spelt as practices have it."
            required
            maxLength={120}
            defaultValue={unknownPlaces[0] ?? ''}
          />
          <div className="grid grid-cols-2 gap-4">
            <Field name="lengthM" id="ground-length" label={places.lengthM} required inputMode="decimal" />
            <Field name="widthM" id="ground-width" label={places.widthM} required inputMode="decimal" />
          </div>
          <Button weight="plain">Save its size</Button>
        </div>
      </ReplyForm>
    </div>
  )
}
