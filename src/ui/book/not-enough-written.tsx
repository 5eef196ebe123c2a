import type { WrittenCount } from '#fairness/book/written-count'
import type { Policy } from '#squad/policy'
import { Notice } from '#ui/page/notice'
import { words } from '#ui/words'

type NotEnoughWrittenProps = { readonly written: WrittenCount; readonly policy: Policy }

/** Said where something is written, and less than the club asks for before anything is judged. */
export function NotEnoughWritten({ written, policy }: NotEnoughWrittenProps) {
  if (written.written === 0 || written.isEnough) return null
  return (
    <Notice>
      {words.notEnoughWritten} The club asks for {Math.round(policy.writtenShareNeeded * 100)} %. What is
      written stands below, without a judgement.
    </Notice>
  )
}
