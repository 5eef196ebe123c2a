import Link from 'next/link'
import type { ComponentProps } from 'react'
import { LinkPending } from '#ui/page/link-pending'

/**
 * A link to another page of the book, which says so while that page is on its way. Nothing is fetched before it is
 * followed: the pages are made anew for whoever asks, and a small server has better things to do.
 */
export function PageLink({ children, ...rest }: ComponentProps<typeof Link>) {
  return (
    <Link prefetch={false} {...rest}>
      {children}
      <LinkPending />
    </Link>
  )
}
