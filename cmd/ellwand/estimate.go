package main

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/screen"
	"ellwand/fabric"
)

func newEstimate(e *env) *cobra.Command {
	var s search
	var widths []string
	var t tableOptions
	cmd := &cobra.Command{
		Use:   "estimate JOB",
		Short: "Say how much of each cloth to buy",
		Long: `Estimate lays the pieces of a job on each of its cloths, open and in every way
of folding, and says how long the cloth must be, how much to buy and how many
outlines there are to cut. "Never below" is a length that no way of laying can
beat.

With --table it prints what stands on a pattern's envelope: a row for each
garment, or for each size, with and without nap, and a column for each width.
What was found is kept in your cache folder, so that the same table comes at
once the next time, and a longer search only improves it.`,
		Example: `  ellwand estimate blouse.yaml
  ellwand estimate blouse.yaml --widths 115cm,140cm,150cm --time 10s
  ellwand estimate skirt.yaml --table --sizes 8,12,16 --widths 115cm,150cm -o table.pdf`,
		Args: one("a job file"),
		RunE: func(cmd *cobra.Command, args []string) error {
			if !t.wanted {
				if err := t.unused(cmd); err != nil {
					return err
				}
				return e.estimate(cmd, args[0], s, widths)
			}
			if s.layout != "" {
				return errors.New("--layout goes with a plain estimate; a table has no layouts to write")
			}
			t.widths = widths
			return e.requirementTable(cmd.Context(), args[0], t.budget(cmd, s), t)
		},
	}
	s.register(cmd)
	cmd.Flags().StringSliceVar(&widths, "widths", nil, "widths to compare instead of the job's: 115cm,140cm or 45in,60in")
	t.register(cmd)
	return cmd
}

func (e *env) estimate(cmd *cobra.Command, path string, s search, widthTexts []string) error {
	if err := s.check(); err != nil {
		return err
	}
	work, err := readJob(path)
	if err != nil {
		return err
	}
	widths, err := parseWidths(widthTexts, work.Unit)
	if err != nil {
		return err
	}
	cloths, err := clothsAt(work, widths)
	if err != nil {
		return err
	}
	files := &files.Set{Force: s.force, Input: path}
	layouts, err := newLayoutPaths(s.layout, len(cloths))
	if err != nil {
		return err
	}
	if err := layouts.check(files, cloths); err != nil {
		return err
	}
	e.warn(work)
	e.warnRemnants(work, path)
	needs, err := e.requireAll(cmd.Context(), work, cloths, s)
	if err != nil {
		return err
	}
	for _, need := range needs {
		if err := layouts.add(files, need); err != nil {
			return err
		}
	}
	if err := files.Commit(); err != nil {
		return err
	}
	if e.json {
		e.noteImpossible(work, needs)
		return e.printJSON(estimateOf(work, needs))
	}
	e.printEstimate(work, needs)
	return nil
}

// warn passes on what the draft has to say.
func (e *env) warn(work *job.Work) {
	for _, sentence := range work.Notes {
		e.note("note: %s", sentence)
	}
}

// warnRemnants says that what is there already is not asked about: a command
// that reckons what to buy leaves it out.
func (e *env) warnRemnants(work *job.Work, path string) {
	for _, cloth := range work.Cloths {
		if len(cloth.Remnants) > 0 {
			e.note("note: %s: this is for cloth to be bought; ellwand remnant %s says whether its remnants are enough", cloth.Cloth.Name, path)
		}
	}
}

// noteImpossible says beside the JSON, which lists the possible lays alone,
// why others are not.
func (e *env) noteImpossible(work *job.Work, needs []fabric.Requirement) {
	for _, need := range needs {
		for _, line := range whyNot(need.Lays) {
			e.note("note: %s, %s wide, %s", need.Cloth.Name, work.Format(need.Cloth.Width), line)
		}
	}
}

func (e *env) printEstimate(work *job.Work, needs []fabric.Requirement) {
	fmt.Fprintln(e.out, work.Title())
	for _, need := range needs {
		cloth := need.Cloth
		fmt.Fprintf(e.out, "\n%s, %s wide, nap %s\n", cloth.Name, work.Format(cloth.Width), cloth.Nap)
		e.printLays(work, need)
		fmt.Fprintln(e.out, advice(work, need))
		if need.Matching != nil {
			fmt.Fprintln(e.out, matchingText(work, need))
		}
		if cloth.Safety != (fabric.Safety{}) || cloth.Shrinkage != (fabric.Shrinkage{}) || cloth.Minimum > 0 {
			fmt.Fprintf(e.out, "That rests on: %s.\n", amountOf(need).RestsOn(unitsOf(work)))
		}
		for _, note := range need.Lays[need.Chosen].Notes {
			fmt.Fprintln(e.out, note)
		}
	}
}

func (e *env) printLays(work *job.Work, need fabric.Requirement) {
	t := screen.Table("lay", "plies", "cuts", "length", "efficiency", "never below", "to buy")
	for _, plan := range need.Lays {
		if !plan.Possible() {
			continue
		}
		t.AppendRow(screen.Row(plan.Lay.String(), pliesOf(plan), plan.Cuts, work.FormatLong(plan.Taken),
			fmt.Sprintf("%.1f %%", 100*plan.Density), work.FormatLong(plan.Least()), buyText(work, need.Cloth, plan)))
	}
	fmt.Fprintln(e.out, t.Render())
	for _, line := range whyNot(need.Lays) {
		fmt.Fprintln(e.out, line)
	}
}

// whyNot says why lays are not in the table. Those with the same reason share
// a line.
func whyNot(lays []fabric.LayPlan) []string {
	var lines []string
	for _, plan := range lays {
		switch {
		case plan.Possible():
		case plan.Throughout != nil:
			lines = append(lines, plan.Lay.String()+": "+plan.Impossible)
		default:
			lines = append(lines, plan.Lay.String()+": not possible: "+once(plan.Impossible))
		}
	}
	return byReason(lines)
}

// pliesOf says in how many plies the cloth lies: "2", or "2 and 1" where only
// a part of it is double.
func pliesOf(plan fabric.LayPlan) string {
	if plan.Lay == fabric.SelvedgeIn || plan.Lay == fabric.InStretches {
		return "2 and 1"
	}
	return strconv.Itoa(plan.Plies)
}

// advice says what to buy, how to lay it, and what opening the cloth saves.
func advice(work *job.Work, need fabric.Requirement) string {
	chosen := need.Lays[need.Chosen]
	text := fmt.Sprintf("Buy %s and lay it %s.", buyText(work, need.Cloth, chosen), chosen.Lay.Way())
	open, folded, both := openAndFolded(need)
	switch {
	case !both:
	case folded.Taken-open.Taken >= 1:
		text += fmt.Sprintf(" Opening the cloth saves %s of length against folding it", work.Format(folded.Taken-open.Taken))
		if folded.Buy <= open.Buy {
			text += ", too little to buy less"
		}
		text += "."
	case chosen.Lay == fabric.Open || chosen.Lay == fabric.FoldedAlong:
		text += " Opening the cloth saves nothing; folded there is half the chalking and cutting."
	}
	if chosen.Lay != fabric.Open && chosen.Lay != fabric.FoldedAlong {
		text += "\n" + strings.Join(chosen.Spreading(work.Format), "\n")
	}
	return text
}

// matchingText says what is matched, what it costs, and what the rule of thumb
// would have said.
func matchingText(work *job.Work, need fabric.Requirement) string {
	m, all := need.Matching, work.PiecesOf(need.Cloth.Name)
	var text strings.Builder
	var said []string
	for _, match := range need.Lays[need.Chosen].Matches {
		if line := match.Describe(all); !slices.Contains(said, line) { // garment after garment
			said = append(said, line)
			fmt.Fprintf(&text, "Matched: %s.\n", line)
		}
	}
	more := "no more"
	if m.Extra() >= 0.5 {
		more = work.Format(m.Extra()) + " more"
	}
	fmt.Fprintf(&text, "Matching takes %s than plain cloth (%s)", more, work.FormatLong(m.Plain))
	if m.Repeats >= 0.05 {
		fmt.Fprintf(&text, ", %.1f repeats", m.Repeats)
	}
	fmt.Fprintf(&text, "; the rule of thumb, one repeat more than plain, comes to %s.", work.FormatLong(m.RuleOfThumb))
	return text.String()
}

// openAndFolded returns the two plans when both are possible.
func openAndFolded(need fabric.Requirement) (open, folded fabric.LayPlan, both bool) {
	var haveOpen, haveFolded bool
	for _, plan := range need.Lays {
		switch {
		case !plan.Possible():
		case plan.Lay == fabric.Open:
			open, haveOpen = plan, true
		case plan.Lay == fabric.FoldedAlong:
			folded, haveFolded = plan, true
		}
	}
	return open, folded, haveOpen && haveFolded
}

// once makes one line of those that give the same reason: the same piece of
// many garments, or several pieces, stand in the way for it.
func once(text string) string {
	return strings.Join(byReason(strings.Split(text, "\n")), "\n  ")
}

// byReason joins the names of lines "name: reason" that share a reason.
func byReason(lines []string) []string {
	var reasons []string
	names := map[string][]string{}
	for _, line := range lines {
		name, reason, _ := strings.Cut(line, ": ")
		if names[reason] == nil {
			reasons = append(reasons, reason)
		}
		if !slices.Contains(names[reason], name) {
			names[reason] = append(names[reason], name)
		}
	}
	out := make([]string, len(reasons))
	for i, reason := range reasons {
		out[i] = strings.Join(names[reason], ", ")
		if reason != "" {
			out[i] += ": " + reason
		}
	}
	return out
}
