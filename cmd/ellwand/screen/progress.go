package screen

import (
	"fmt"
	"io"
	"strings"
	"time"

	wide "github.com/jedib0t/go-pretty/v6/text"

	"ellwand/pieces/text"
)

// Progress shows how a search goes on one line, which is redrawn and leaves
// nothing behind. It writes only to a terminal that can redraw a line.
type Progress struct {
	out   io.Writer // nil when nobody watches
	width func() int
	title string
	drawn time.Time
}

// redraw is how often the line changes; faster than that nobody reads.
const redraw = 200 * time.Millisecond

// howToEnd stands where there is room for it.
const howToEnd = " (Ctrl-C ends the search)"

// NewProgress begins it on a terminal; on anything else, or when it is to be
// quiet, it shows nothing.
func NewProgress(to io.Writer, quiet bool) *Progress {
	if quiet || !IsTerminal(to) {
		return &Progress{}
	}
	return &Progress{out: to, width: func() int { return Width(to) }}
}

// Show reports the length found so far under a title.
func (p *Progress) Show(title, length, bound string, elapsed time.Duration) {
	if p.out == nil || title == p.title && time.Since(p.drawn) < redraw {
		return
	}
	p.title, p.drawn = title, time.Now()
	p.draw(fmt.Sprintf("%s: %s, never below %s, %.0f s", title, length, bound, elapsed.Seconds()))
}

// Count shows how many of several searches are over, and when one is about how long
// the rest will take.
func (p *Progress) Count(title string, done, all int, elapsed time.Duration) {
	if p.out == nil {
		return
	}
	const width = 24
	if done == 0 {
		p.draw(fmt.Sprintf("%s [%*s] 0 of %d", title, width, "", all))
		return
	}
	left := elapsed * time.Duration(all-done) / time.Duration(done)
	p.draw(fmt.Sprintf("%s [%-*s] %d of %d, about %.0f s left", title, width, strings.Repeat("=", width*done/all), done,
		all, left.Seconds()))
}

// Trying shows what is being tried.
func (p *Progress) Trying(what string) {
	if p.out != nil {
		p.draw("trying: " + what)
	}
}

// Done clears the line.
func (p *Progress) Done() {
	if p.out != nil {
		fmt.Fprint(p.out, "\r\x1b[K")
	}
}

// draw the line anew. It is cut where the terminal ends: a line that is broken
// there could not be redrawn.
func (p *Progress) draw(line string) {
	line = text.Line(line)
	room := p.width() - 1
	if wide.StringWidth(line+howToEnd) <= room {
		line += howToEnd
	}
	fmt.Fprint(p.out, "\r\x1b[K"+wide.Trim(line, room))
}
