// Package plotter draws a lay at full size, for a plotter's roll or for
// sheets of paper that are joined: the marker is laid on the cloth and cut
// through.
package plotter

import (
	"fmt"
	"io"

	"ellwand/fabric/lay"
	"ellwand/fabric/marker"
	"ellwand/pieces/drawing"
	"ellwand/pieces/paper"
	"ellwand/pieces/sheet"
)

// Rolls are the usual widths of plotter paper, mm: 24, 36, 42, 60 and 72 in, as
// paper merchants round them [source.CommonPractice].
var Rolls = []float64{610, 914, 1067, 1520, 1830}

// Options of a full-size marker.
type Options struct {
	// Job is the title.
	Job string
	// Paper to draw on. A roll without a height is the narrowest of Rolls that
	// holds the lay, or the widest.
	Paper paper.Paper
	// Longest page of a roll, mm, margins included; 0 is as long as the lay.
	// A longer lay is cut into frames.
	Longest float64
	// Inches gives the ruler in inches instead of cm.
	Inches bool
	// Children says that children wear what is cut.
	Children bool
}

// RollFor is the narrowest of Rolls on which a lay lies in one row with those
// margins, or the widest of all.
func RollFor(plan lay.Plan, margin float64) float64 {
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
func Pages(plan lay.Plan, options Options) ([]drawing.Page, error) {
	if !plan.Possible() {
		return nil, fmt.Errorf("the %s lay of %s cannot be drawn: %s", plan.Lay, plan.Cloth, plan.Impossible)
	}
	if len(plan.Pieces) == 0 {
		return nil, fmt.Errorf("the %s lay of %s has no pieces to draw", plan.Lay, plan.Cloth)
	}
	if err := options.Check(); err != nil {
		return nil, err
	}
	paper := options.Paper
	if paper.IsRoll() && paper.Height == 0 {
		paper.Height = RollFor(plan, paper.Margin)
	}
	plane := draw(plan, options)
	tiling := sheet.EvenTiling(plane, paper)
	if !paper.IsRoll() {
		if turned := sheet.EvenTiling(plane, paper.Turned()); turned.Sheets(plane) < tiling.Sheets(plane) {
			tiling = turned
		}
		return tiling.Pages(plane), nil
	}
	width, height := plane.Extent()
	if options.Longest > 0 {
		tiling.Columns = frames(spans(plane.Shapes, 0), width, options.room(), frameCost)
	}
	if len(tiling.Rows) > 2 {
		_, cell := paper.Cell()
		// No row more than it needs, whatever is cut through: it takes the
		// whole length in paper.
		tiling.Rows = frames(spans(plane.Shapes, 1), height, cell, float64(len(plane.Shapes))+1)
	}
	return tiling.Pages(plane), nil
}

// Check refuses a paper that is too small, and frames that are too short.
func (o Options) Check() error {
	paper := o.Paper
	if paper.IsRoll() && paper.Height == 0 {
		paper.Height = Rolls[0]
	}
	if err := paper.Check(); err != nil {
		return err
	}
	if paper.IsRoll() && o.Longest > 0 && o.room() < leastFrame-1 { // a little less, as the message rounds
		return fmt.Errorf("frames of %s with their margins are too short; take %s or more", paper.Say(o.Longest), paper.Say(leastFrame+o.Longest-o.room()))
	}
	return nil
}

// room of the longest frame between its trim lines, mm.
func (o Options) room() float64 { return o.Longest - 2*o.Paper.Margin - o.Paper.Overlap }

// leastFrame has room for the head of the marker, mm [source.OwnChoice].
const leastFrame = 200.0

// Title of the marker: the job, the cloth and the lay.
func Title(plan lay.Plan, options Options) string {
	title := fmt.Sprintf("%s, lay %s", plan.Cloth, plan.Lay)
	if options.Job != "" {
		title = options.Job + ": " + title
	}
	return title
}

// Write draws the lay at full size as a PDF, a page for each frame or sheet.
func Write(w io.Writer, plan lay.Plan, options Options) error {
	if options.Longest == 0 || options.Longest > drawing.LongestPage {
		options.Longest = drawing.LongestPage
	}
	pages, err := Pages(plan, options)
	if err != nil {
		return err
	}
	return drawing.WritePDF(w, Title(plan, options), pages)
}
