package plotter

import (
	"fmt"

	"ellwand/fabric/lay"
	"ellwand/pieces/paper"
	"ellwand/pieces/safety"
)

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
	// Youngest of those who wear what is cut.
	Youngest safety.Wearer
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
		return fmt.Errorf("frames of %s with their margins are too short; take %s or more", paper.Say(o.Longest),
			paper.Say(leastFrame+o.Longest-o.room()))
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

// Rolls are the usual widths of plotter paper, mm: 24, 36, 42, 60 and 72 in, as
// paper merchants round them [source.CommonPractice].
var Rolls = []float64{610, 914, 1067, 1520, 1830}
