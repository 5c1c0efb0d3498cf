package wholejob

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/page/browser"
)

// manyPieces is a job of 150 pieces, in 30 shapes.
func manyPieces() string {
	var out strings.Builder
	out.WriteString("job: Bunting\nunits: cm\ngarments:\n  - name: bunting\n    pieces:\n")
	for i := range 30 {
		fmt.Fprintf(&out, "      - {name: flag %d, width: %d, height: %d, cut: 5}\n", i+1, 8+i%7, 10+i%11)
	}
	out.WriteString("cloths:\n  - {name: shell, width: 140}\n")
	return out.String()
}

// watching begins to note when frames are drawn, and which tasks are long.
const watching = `window.frames = []; window.long = [];
	new PerformanceObserver((list) => list.getEntries().forEach((one) => window.long.push(one.duration)))
		.observe({ type: 'longtask' });
	const note = (now) => { window.frames.push(now); requestAnimationFrame(note); };
	requestAnimationFrame(note);`

// BenchmarkDrag drags one of 150 pieces over the others: the time between two frames of
// the browser, its middle and what 95 of 100 stay under, and the longest task, ms.
func BenchmarkDrag(b *testing.B) {
	v := browser.VisitWith(b, browser.Usual, map[string]string{"bunting.yaml": manyPieces()})
	v.Show("#/job/bunting.yaml/lay", `document.querySelectorAll('.cloth .piece').length === 150`)
	v.Laid()
	x, y := v.Middle(browser.Piece("flag 1"))
	v.Do(chromedp.Evaluate[chromedp.Void](watching))
	for b.Loop() {
		v.Do(chromedp.DragAndDropXY(x, y, x+200, y-100, 120))
		v.Saved()
	}
	frames := browser.Value[[]float64](v, `window.frames`)
	long := browser.Value[[]float64](v, `[0, ...window.long]`)
	require.Greater(b, len(frames), 60)
	var between []float64
	for i := range frames[1:] {
		between = append(between, frames[i+1]-frames[i])
	}
	slices.Sort(between)
	b.ReportMetric(between[len(between)/2], "ms/frame")
	b.ReportMetric(between[len(between)*95/100], "ms/frame-95%")
	b.ReportMetric(slices.Max(long), "ms-longest-task")
}

// BenchmarkFirstPaint opens the page anew: until something is seen, ms.
func BenchmarkFirstPaint(b *testing.B) {
	v := browser.Visit(b, browser.Usual, "blouse.yaml")
	var all []float64
	for b.Loop() {
		v.Do(chromedp.Reload())
		v.Until(`performance.getEntriesByName('first-contentful-paint').length`)
		all = append(all, browser.Value[float64](v, `performance.getEntriesByName('first-contentful-paint')[0].startTime`))
	}
	slices.Sort(all)
	b.ReportMetric(all[len(all)/2], "ms-first-paint")
}

// BenchmarkKeystroke types into a measurement: until the pieces are drawn anew, ms.
func BenchmarkKeystroke(b *testing.B) {
	v := browser.Visit(b, browser.Usual, "blouse.yaml")
	v.Show("#/job/blouse.yaml/pieces", `document.querySelectorAll('.draft .cutting').length > 3`)
	var all []float64
	for i := 0; b.Loop(); i++ {
		all = append(all, browser.Await[float64](v, fmt.Sprintf(keystroke, 20+i%9)))
	}
	slices.Sort(all)
	b.ReportMetric(all[len(all)/2], "ms-key-to-drawing")
}

// keystroke writes a hem width, and waits for the sleeve to change.
const keystroke = `new Promise((done) => {
	const field = [...document.querySelectorAll('.block input')].find((one) =>
		one.closest('.field')?.textContent.startsWith('width of the hem'));
	const sleeve = [...document.querySelectorAll('.pieceDraft')].find((one) =>
		one.querySelector('figcaption').textContent.startsWith('sleeve'));
	const begun = performance.now();
	new MutationObserver((list, observer) => {
		observer.disconnect();
		requestAnimationFrame(() => done(performance.now() - begun));
	}).observe(sleeve.querySelector('svg'), { childList: true });
	field.focus();
	field.value = '%d';
	field.dispatchEvent(new Event('input', { bubbles: true }));
})`
