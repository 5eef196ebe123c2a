'use client'

import { Button } from '#ui/page/button'

export function PrintButton() {
  return (
    <Button type="button" onClick={() => window.print()}>
      Print it
    </Button>
  )
}
