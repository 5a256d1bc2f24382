/** What is shown as long as there is no page: it gives way to the first one by itself. */
export const waitingPage = (events: string): string => `<!DOCTYPE html>
<html lang="en">
<meta charset="utf-8">
<title>At the bench</title>
<meta name="viewport" content="width=device-width, initial-scale=1">
<style>body { font: 17px/1.4 system-ui, sans-serif; padding: 1rem; }</style>
<p id="why" role="status">The page is being made.</p>
<script>
const events = new EventSource(${JSON.stringify(events)});
events.addEventListener('page', () => location.reload());
events.addEventListener('broken', (e) => {
  document.getElementById('why').textContent = 'The design cannot be read at the moment: ' + JSON.parse(e.data);
});
</script>
</html>
`;
