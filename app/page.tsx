export default function Home() {
  return <h1>Daybook</h1>
}
