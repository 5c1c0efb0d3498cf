package trousers

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/draft/internal/drafttest"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// The trousers are built after one handbook; this checks them against another
// (Armstrong, Patternmaking for Fashion Design, 5th edition, the trouser
// foundation, from memory [source.Armstrong]): the crotch line 3/4 in below the body; the front
// fork a quarter of the front's width on the hip line, a quarter of the hip and
// 1/4 in; the back fork half of the back's; the crease in the middle of the
// front's crotch line; the knee 1 in above the middle of the inside leg. Hers
// hang from the hip: ours are closer, their back fork up to 2 in shorter.
func TestAnotherHandbookTrousers(t *testing.T) {
	const inch = 25.4
	block := drafted(t, Options{})
	front, back := block.Pieces[0], block.Pieces[1]
	hipLine := func(p pieces.Piece) pieces.Path { return p.Marks[0].Path }
	frontInside, backInside := drafttest.Path(t, front, seams.InsideLeg), drafttest.Path(t, back, seams.InsideLeg)
	fork, backFork := frontInside.Start(), backInside.Start()
	quarter := size12.Hip/4 + inch/4

	assert.InDelta(t, size12.BodyRise+0.75*inch, -fork[1], 15, "the crotch line")
	assert.InDelta(t, quarter/4, hipLine(front).Start()[0]-fork[0], 5, "the front fork")
	reach := hipLine(back).Start()[0] - backFork[0]
	assert.LessOrEqual(t, reach, quarter/2, "the back fork")
	assert.GreaterOrEqual(t, reach, quarter/2-2*inch, "the back fork")
	assert.InDelta(t, 0, (fork[0]+hipLine(front).End()[0])/2, 1, "the crease, in the middle of the crotch line")

	insideLeg := size12.OutsideLeg - size12.BodyRise
	last := frontInside[len(frontInside)-1]
	assert.InDelta(t, -(size12.BodyRise + insideLeg/2 - inch), last.Start()[1], inch, "the knee")
}
