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
	"ellwand/pieces/sheet"
)

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
		return nil, fmt.Errorf("the %s lay of %s cannot be drawn: it is not possible", plan.Lay, plan.Cloth)
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

// Write draws the lay at full size as a PDF, a page for each frame or sheet.
func Write(w io.Writer, plan lay.Plan, options Options) error {
	if options.Longest == 0 || options.Longest > drawing.LongestPage {
		options.Longest = drawing.LongestPage
	}
	pages, err := Pages(plan, options)
	if err != nil {
		return err
	}
	return drawing.WriteLayeredPDF(w, Title(plan, options), pages)
}
