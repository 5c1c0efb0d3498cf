// Package plotter draws a lay at full size, for a plotter's roll or for
// sheets of paper that are joined: the marker is laid on the cloth and cut
// through.
package plotter

import (
	"fmt"
	"io"
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric"
	"ellwand/fabric/marker"
	"ellwand/pieces/drawing"
	"ellwand/pieces/sheet"
)

// Rolls are the usual widths of plotter paper, mm: 24, 36, 42, 60 and 72 in.
var Rolls = []float64{610, 914, 1067, 1520, 1830}

// Options of a full-size marker.
type Options struct {
	// Job is the title.
	Job string
	// Paper to draw on. A roll without a height is the narrowest of Rolls that
	// holds the lay, or the widest.
	Paper sheet.Paper
	// Longest page of a roll, mm, margins included; 0 is as long as the lay.
	// A longer lay is cut into frames.
	Longest float64
	// Inches gives the ruler in inches instead of cm.
	Inches bool
}

// RollFor is the narrowest of Rolls on which a lay lies in one row with those
// margins, or the widest of all.
func RollFor(plan fabric.LayPlan, margin float64) float64 {
	low, high := marker.Edges(plan)
	for _, roll := range Rolls {
		if high-low <= roll-2*margin {
			return roll
		}
	}
	return Rolls[len(Rolls)-1]
}

// Pages draws the lay at full size on as many pages as it needs: one on a
// roll that is wide enough, unless it is longer than the longest page; then it
// is cut into frames where the fewest pieces are cut through. It refuses a lay
// that is not possible.
func Pages(plan fabric.LayPlan, options Options) ([]drawing.Page, error) {
	if !plan.Possible() {
		return nil, fmt.Errorf("the %s lay of %s cannot be drawn: %s", plan.Lay, plan.Cloth, plan.Impossible)
	}
	if len(plan.Pieces) == 0 {
		return nil, fmt.Errorf("the %s lay of %s has no pieces to draw", plan.Lay, plan.Cloth)
	}
	paper := options.Paper
	if paper.IsRoll() && paper.Height == 0 {
		paper.Height = RollFor(plan, paper.Margin)
	}
	if err := paper.Check(); err != nil {
		return nil, err
	}
	plane := draw(plan, options)
	tiling := sheet.EvenTiling(plane, paper)
	if paper.IsRoll() && options.Longest > 0 {
		width, _ := plane.Extent()
		longest := options.Longest - 2*paper.Margin - paper.Overlap
		if longest < leastFrame {
			return nil, fmt.Errorf("frames of %.0f mm with their margins are too short; take %.0f mm or more", options.Longest, leastFrame+2*paper.Margin+paper.Overlap)
		}
		tiling.Columns = frames(plane.Shapes, width, longest)
	}
	return tiling.Pages(plane), nil
}

// leastFrame has room for the head of the marker, mm.
const leastFrame = 200.0

// Title of the marker: the job, the cloth and the lay.
func Title(plan fabric.LayPlan, options Options) string {
	title := fmt.Sprintf("%s, lay %s", plan.Cloth, plan.Lay)
	if options.Job != "" {
		title = options.Job + ": " + title
	}
	return title
}

// Write draws the lay at full size as a PDF, a page for each frame or sheet.
func Write(w io.Writer, plan fabric.LayPlan, options Options) error {
	if options.Longest == 0 || options.Longest > drawing.LongestPage {
		options.Longest = drawing.LongestPage
	}
	pages, err := Pages(plan, options)
	if err != nil {
		return err
	}
	return drawing.WritePDF(w, Title(plan, options), pages)
}

// frames cuts a length into stretches no longer than given, where the fewest
// shapes are cut through; a frame more is made for that only where it saves
// more than two of them. It finds the best cuts of all, by going through the
// places to cut from the left (dynamic programming; Bellman, 1957).
func frames(shapes []orb.Ring, length, longest float64) []float64 {
	places := placesToCut(shapes, length, longest)
	cost := make([]float64, len(places))
	from := make([]int, len(places))
	for i := 1; i < len(places); i++ {
		cost[i] = math.Inf(1)
		through := 0.0
		if i < len(places)-1 {
			through = cutThrough(shapes, places[i])
		}
		for j := i - 1; j >= 0 && places[i]-places[j] <= longest+1e-6; j-- {
			if c := cost[j] + through + frameCost; c < cost[i] {
				cost[i], from[i] = c, j
			}
		}
	}
	var out []float64
	for i := len(places) - 1; i > 0; i = from[i] {
		out = append([]float64{places[i]}, out...)
	}
	return append([]float64{0}, out...)
}

// frameCost of one frame more, in shapes cut through.
const frameCost = 2.0

// placesToCut are the ends of the shapes and, so that there is always a way,
// a place every 50 mm.
func placesToCut(shapes []orb.Ring, length, longest float64) []float64 {
	step := math.Min(50, longest)
	places := []float64{0}
	for x := step; x < length; x += step {
		places = append(places, x)
	}
	for _, ring := range shapes {
		for _, x := range []float64{ring.Bound().Min[0], ring.Bound().Max[0]} {
			if x > 0 && x < length {
				places = append(places, x)
			}
		}
	}
	return sortedApart(append(places, length))
}

func cutThrough(shapes []orb.Ring, x float64) float64 {
	n := 0.0
	for _, ring := range shapes {
		if b := ring.Bound(); b.Min[0] < x-1e-6 && b.Max[0] > x+1e-6 {
			n++
		}
	}
	return n
}
