export const Desk = () => (
  <main class="page">
    <h1>Desk</h1>
  </main>
);
