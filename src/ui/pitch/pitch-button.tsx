import type { ButtonHTMLAttributes } from 'react'

type Weight = 'main' | 'plain' | 'quiet'

const look: Readonly<Record<Weight, string>> = {
  main: 'border-ink bg-ink text-white',
  plain: 'border-ink bg-leaf text-ink',
  quiet: 'border-transparent bg-leaf text-ink underline underline-offset-4',
}

type PitchButtonProps = ButtonHTMLAttributes<HTMLButtonElement> & { readonly weight?: Weight }

/** A button for one cold thumb: black or white, never small. */
export function PitchButton({ weight = 'plain', className = '', ...rest }: PitchButtonProps) {
  return (
    <button
      type="button"
      className={`tap cursor-pointer touch-manipulation border-2 px-3 leading-tight font-semibold disabled:cursor-default disabled:border-dashed disabled:bg-leaf disabled:text-ink ${look[weight]} ${className}`}
      {...rest}
    />
  )
}
