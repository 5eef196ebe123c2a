import type { ReactNode } from 'react'

type NoticeProps = {
  /** `done` answers something the person just did, and is read out. */
  readonly tone?: 'plain' | 'done'
  readonly children: ReactNode
}

/** A quiet remark beside the figures. */
export function Notice({ tone = 'plain', children }: NoticeProps) {
  return (
    <div
      role={tone === 'done' ? 'status' : 'note'}
      className={`max-w-prose border-l-4 px-4 py-2 ${tone === 'done' ? 'border-accent bg-accent-pale' : 'border-rule-strong bg-paper'}`}
    >
      {children}
    </div>
  )
}
