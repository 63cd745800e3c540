/** On every page of the demonstration: nobody may take an invented result for a real one. */
export function DemoMark() {
  return (
    <section className="demo-mark small" aria-label="Demonstration">
      Demonstration: an invented society, nobody here is real.
    </section>
  )
}
