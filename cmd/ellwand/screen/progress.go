package screen

import (
	"fmt"
	"io"
	"os"
	"strings"
	"time"

	"golang.org/x/term"

	"ellwand/pieces/text"
)

// Progress shows how a search goes: the first layout on a line of its own as
// soon as it is found, then one line that is redrawn. It writes only to a
// terminal.
type Progress struct {
	out   io.Writer // nil when nobody watches
	title string
	drawn time.Time
}

// redraw is how often the line changes; faster than that nobody reads.
const redraw = 200 * time.Millisecond

// NewProgress begins it on a terminal; on anything else, or when it is to be
// quiet, it shows nothing.
func NewProgress(to io.Writer, quiet bool) *Progress {
	file, isFile := to.(*os.File)
	if quiet || !isFile || !term.IsTerminal(int(file.Fd())) {
		return &Progress{}
	}
	return &Progress{out: to}
}

// Show reports the length found so far under a title. A new title begins a
// new line.
func (p *Progress) Show(title, length, bound string, elapsed time.Duration) {
	if p.out == nil {
		return
	}
	title = text.Line(title)
	if title != p.title {
		p.title = title
		fmt.Fprintf(p.out, "\r\x1b[K%s: first layout %s after %.1f s (Ctrl-C ends the search)\n", title, length,
			elapsed.Seconds())
		return
	}
	if time.Since(p.drawn) < redraw {
		return
	}
	p.drawn = time.Now()
	fmt.Fprintf(p.out, "\r\x1b[K%s: %s, never below %s, %.0f s", title, length, bound, elapsed.Seconds())
}

// Count shows how many of several searches are over, and about how long the
// rest will take.
func (p *Progress) Count(title string, done, all int, elapsed time.Duration) {
	if p.out == nil || done == 0 {
		return
	}
	const width = 24
	left := elapsed * time.Duration(all-done) / time.Duration(done)
	fmt.Fprintf(p.out, "\r\x1b[K%s [%-*s] %d of %d, about %.0f s left (Ctrl-C ends the search)",
		text.Line(title), width, strings.Repeat("=", width*done/all), done, all, left.Seconds())
}

// Done clears the line that is redrawn.
func (p *Progress) Done() {
	if p.out != nil {
		fmt.Fprint(p.out, "\r\x1b[K")
	}
}

// Trying shows what is being tried.
func (p *Progress) Trying(what string) {
	if p.out != nil {
		fmt.Fprintf(p.out, "\r\x1b[Ktrying: %s (Ctrl-C ends the search)", text.Line(what))
	}
}
