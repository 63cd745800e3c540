/** On every page of the demonstration: nobody may take an invented result for a real one. */
export function DemoMark() {
  return (
    <p className="demo-mark small" role="note">
      Demonstration: an invented society, nobody here is real.
    </p>
  )
}
