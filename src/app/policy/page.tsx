import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { changePolicy } from '#server/policy-actions'
import { loadPolicy } from '#server/policy-views'
import { getViewer } from '#server/viewer'
import { PolicyBody } from '#ui/policy/policy-body'
import { words } from '#ui/words'

export const metadata: Metadata = { title: words.tab.policy }

export default async function PolicyPage() {
  const viewer = await getViewer()
  const { frame, ...policy } = await orNotFound(loadPolicy(viewer))
  return (
    <Shell
      frame={frame}
      tab="policy"
      title="Fair-play policy"
      lead="What this club has agreed is fair. Settings of the club, not rules of any governing body; where those ask for more, they come first."
    >
      <PolicyBody {...policy} change={changePolicy} />
    </Shell>
  )
}
