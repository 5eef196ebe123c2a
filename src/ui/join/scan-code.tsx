type ScanCodeProps = {
  /** Squares of one unit each in a drawing `size` units wide, its margin included. */
  readonly code: { readonly size: number; readonly path: string }
  readonly label: string
}

/** A code to scan: dark on light whatever the page looks like, since many cameras read nothing else. */
export function ScanCode({ code, label }: ScanCodeProps) {
  return (
    <svg
      role="img"
      aria-label={label}
      viewBox={`0 0 ${code.size} ${code.size}`}
      shapeRendering="crispEdges"
      className="w-full max-w-72"
    >
      <rect width={code.size} height={code.size} fill="#ffffff" />
      <path d={code.path} fill="#000000" />
    </svg>
  )
}
