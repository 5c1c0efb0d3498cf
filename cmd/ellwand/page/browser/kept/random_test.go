package kept

import (
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/page/browser"
	"ellwand/fabric/lay"
	"ellwand/testdata/sample"
)

const bag = "# for the market\njob: Bag   # one\nunits: cm\n\ngarments:\n  - name: bag\n    pieces:\n" +
	"      - {name: side, width: 38, height: 44, cut: 2}  # both sides\n      - name: strap\n        width: 9\n" +
	"        height: 70\n# the cloth\ncloths:\n  - name: shell\n    width: 90   # measured\n"

// sequence of things that are done to one job on the page.
type sequence struct {
	*browser.Visitor
	random *rand.Rand
	name   string
}

// onPage is what the program tells the page, and what the page shows.
type onPage struct {
	Text            string
	CanUndo         bool
	Found, Verified bool
	Held            []heldPiece
	ShownHeld       int
	UndoIsOff       bool
	PrintingIsThere bool
	// Wrong says that a field holds what cannot be its value: nothing is printed then.
	Wrong bool
}

type heldPiece struct {
	Name string
	Copy int
	At   [2]float64
}

const lookAt = `(async () => {
	const name = %q;
	const job = await (await fetch('/api/jobs/' + name)).json();
	const answer = await fetch('/api/jobs/' + name + '/layout?cloth=shell&width=900mm&lay=open');
	const layout = answer.ok ? await answer.json() : { pieces: [], verified: false };
	return {
		Found: answer.ok, Text: job.text, CanUndo: job.can.undo, Verified: layout.verified,
		Held: layout.pieces.filter((one) => one.by_hand).map(({ name, copy, at }) => ({ Name: name, Copy: copy, At: at })),
		ShownHeld: document.querySelectorAll('.cloth .piece.held').length,
		UndoIsOff: [...document.querySelectorAll('.buttons button')].find((one) => one.textContent === 'Undo').disabled,
		Wrong: (job.fields ?? []).some((field) => field.fault),
		PrintingIsThere: !document.querySelector('.buttons a[target]').hidden,
	};
})()`

func (s *sequence) open() {
	s.Helper()
	s.Show("#/job/"+s.name+"/lay/shell/900mm/open", browser.OnScreen+`'lay'`)
	s.settled()
}

// settled when all is saved and laid, and the page shows what the program tells and the file
// has.
func (s *sequence) settled() onPage {
	s.Helper()
	var page onPage
	for range 400 {
		s.Laid()
		s.Until(`document.getElementById('saved').dataset.saved !== 'false'`)
		page = browser.Await[onPage](s.Visitor, fmt.Sprintf(lookAt, s.name))
		text := s.File(s.name)
		if page.Text == text && page.CanUndo != page.UndoIsOff && page.PrintingIsThere == (page.Verified && !page.Wrong) &&
			len(page.Held) == page.ShownHeld && page.ShownHeld == strings.Count(text, "piece:") {
			return page
		}
	}
	require.Fail(s, "page, program and file do not agree", "%+v\n%s", page, s.File(s.name))
	return page
}

// agree says that page, file and verifier are of one mind.
func (s *sequence) agree(done []string) {
	s.Helper()
	page, text := s.settled(), s.File(s.name)
	file, err := job.Parse(s.name, []byte(text))
	require.NoError(s, err, "%v", done)
	work, err := file.Resolve()
	require.NoError(s, err, "%v", done)
	cloths, err := app.Cloths(work, nil)
	require.NoError(s, err)
	kind := lay.Open
	planned, err := app.Plan(s.Context(), work, cloths[0], &kind, app.Search{Passes: 3, Seed: 1}, app.Watch{})
	if !page.Verified {
		return // what cannot be proven is not printed, whatever the commands find
	}
	require.NoError(s, err, "%v\n%s", done, text)
	for _, held := range page.Held {
		at := slices.IndexFunc(planned.Plan.Pieces, func(l lay.Laid) bool {
			return l.Name == held.Name &&
				l.Copy == held.Copy
		})
		require.GreaterOrEqual(s, at, 0, "%v", done)
		l := planned.Plan.Pieces[at]
		assert.Less(s, math.Hypot(l.X-held.At[0], l.Y-held.At[1]), 0.01, "%v: %s lies elsewhere", done, held.Name)
	}
}

// piece of the cloth at random, as an expression.
func (s *sequence) piece() string {
	return fmt.Sprintf(`document.querySelectorAll('.cloth .piece')[%d]`, s.random.IntN(3))
}

func (s *sequence) press(key string) {
	s.Do(chromedp.Evaluate[chromedp.Void](s.piece() + `.focus()`))
	s.Press(key)
}

func (s *sequence) click(name string) {
	s.Do(chromedp.Evaluate[chromedp.Void](`[...document.querySelectorAll('.buttons button')].find(
		(one) => one.textContent === '` + name + `').click()`))
}

// write into a field of the cloth, and leave it.
func (s *sequence) write(value string) {
	s.Do(browser.Written(browser.Labelled("Gap between pieces"), value))
}

// step does one thing at random, and says what.
func (s *sequence) step() string {
	switch s.random.IntN(8) {
	case 0, 1:
		right, down := s.random.Float64()*400-200, s.random.Float64()*200-100
		s.Drag(s.piece()+`.querySelector('.outline')`, right, down)
		return fmt.Sprintf("drag %.0f %.0f", right, down)
	case 2:
		s.press("h")
		return "lock"
	case 3:
		s.press("t")
		return "turn"
	case 4:
		undo := []string{"Undo", "Do again"}[s.random.IntN(2)]
		s.click(undo)
		return undo
	case 5:
		value := []string{"", "0.5", "2 mm", "x"}[s.random.IntN(4)]
		s.write(value)
		return "gap " + value
	case 6:
		s.Do(chromedp.Reload())
		return "reload"
	default:
		text := s.File(s.name) + "# later\n"
		beside := filepath.Join(s.Folder, ".beside")
		require.NoError(s, os.WriteFile(beside, []byte(text), 0o644))
		require.NoError(s, os.Rename(beside, filepath.Join(s.Folder, s.name)))
		s.Until(`document.querySelector('.notice')`)
		s.Do(browser.ClickOn(`document.querySelector('.notice button')`))
		return "outside"
	}
}

// Whatever is done in whatever order, page, file and verifier agree, and undo leads back to
// the first file, byte for byte.
func TestSequencesAtRandom(t *testing.T) {
	const together = 10 // in one browser; a visit is bounded in time
	all := sample.Of(3, 200)
	for first := 0; first < all; first += together {
		t.Run(fmt.Sprint(first), func(t *testing.T) {
			v := browser.VisitWith(t, browser.Usual, nil)
			for i := first; i < min(first+together, all); i++ {
				tried(t, v, i)
			}
		})
	}
}

// tried is one sequence, there and back.
func tried(t *testing.T, v *browser.Visitor, i int) {
	t.Helper()
	s := &sequence{v, rand.New(rand.NewPCG(uint64(i), 1)), fmt.Sprintf("bag%d.yaml", i)}
	require.NoError(t, os.WriteFile(filepath.Join(v.Folder, s.name), []byte(bag), 0o644))
	s.open()
	var done []string
	for range 4 + s.random.IntN(5) {
		done = append(done, s.step())
		t.Log(s.name, done[len(done)-1])
		s.agree(done)
	}
	for range 40 {
		if s.settled().UndoIsOff {
			break
		}
		s.click("Undo")
	}
	assert.Equal(t, bag, s.File(s.name), "%v", done)
}
