/** Time of day of an instant in a time zone, such as 18:04. */
export function formatTime(instant: Date | number, timeZone: string): string {
  return new Intl.DateTimeFormat('en-GB', { timeZone, hour: '2-digit', minute: '2-digit' }).format(instant)
}
