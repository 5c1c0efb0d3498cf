package main

import (
	"context"
	"fmt"
	"io"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/limit"
	"ellwand/pieces/drawing"
	"ellwand/pieces/measure"
	"ellwand/pieces/projector"
)

// projectOptions are the options of project.
type projectOptions struct {
	showOptions
	sizes, cloths       []string
	ground, grid, scale string
}

func newProject(e *env) *cobra.Command {
	var o projectOptions
	cmd := &cobra.Command{
		Use:   "project FILE -o projected.pdf",
		Short: "Draw the pieces to be projected onto the cloth",
		Long: `Project draws the pieces of a job or of a file of pieces on one page, to be
projected onto the cloth from above in place of being printed: thick light lines
on a dark ground, or dark ones on a light ground, with a grid to set the
projector square, and a square of 10 cm, or 4 in, to be measured on the cloth
before anything is cut.

A PDF has its layers (cut, sew, marks, words, each size, the grid), which a
viewer shows and hides. A PNG has 2 dots a mm. How the projector is set up is
told by ellwand help projector.`,
		Example: `  ellwand project blouse.yaml -o blouse-projected.pdf
  ellwand project blouse.yaml --sizes 10,12,14 -o blouse-projected.pdf
  ellwand project skirt.yaml -o skirt.png --ground light --scale 25%`,
		Args: one("a job or a file of pieces"),
		RunE: func(cmd *cobra.Command, args []string) error { return e.project(cmd.Context(), args[0], o) },
	}
	o.register(cmd, "the file to write: .pdf or .png (required)")
	flags := cmd.Flags()
	flags.Var(limit.EntriesOf(&o.sizes, limit.Sizes), "sizes", "sizes of the job's table, over each other: 10,12,14")
	flags.Var(limit.EntriesOf(&o.cloths, limit.Cloths), "cloth", "only pieces that are cut from these cloths")
	flags.StringVar(&o.ground, "ground", "dark", "dark or light")
	flags.StringVar(&o.grid, "grid", "", "how far the lines of the grid are apart, 0 for none (usual 10 cm or 4 in)")
	flags.StringVar(&o.scale, "scale", "100%", "size of the page to that on the cloth: 100%, 12.5% or 1:8")
	return cmd
}

func (e *env) project(ctx context.Context, path string, o projectOptions) error {
	if o.output == "" {
		return fmt.Errorf("the drawing needs a file to go to; for example: ellwand project %s -o projected.pdf", path)
	}
	all, err := app.ReadSized(ctx, path, o.sizes)
	if err != nil {
		return err
	}
	if all, err = all.Only(app.Choice{Pieces: o.pieces, Cloths: o.cloths}); err != nil {
		return err
	}
	options, err := o.options(all.Inches())
	if err != nil {
		return err
	}
	page, err := all.Projected(options)
	if err != nil {
		return err
	}
	write, err := projectFormat(o.output, all.Title, page, options)
	if err != nil {
		return err
	}
	out := &files.Set{Force: o.force, Input: path}
	if err := out.Add(o.output, write); err != nil {
		return err
	}
	return e.shown(all, out)
}

// options of the drawing, in inches or cm.
func (o projectOptions) options(inches bool) (projector.Options, error) {
	out, unit := projector.Usual(inches), measure.Centimetre
	if inches {
		unit = measure.Inch
	}
	switch strings.ToLower(o.ground) {
	case "dark":
	case "light":
		out.Light = true
	default:
		return out, fmt.Errorf("--ground %q: write dark or light", o.ground)
	}
	if o.grid != "" {
		grid, err := measure.Parse(o.grid, unit)
		const least, most = 5, 1000 // mm [source.OwnChoice]
		if err != nil || grid != 0 && (grid < least || grid > most) {
			return out, fmt.Errorf("--grid %q: write how far its lines are apart, from %d to %d mm, or 0 for none",
				o.grid, least, most)
		}
		out.Grid = float64(grid)
	}
	var err error
	out.Scale, err = scaleOf(o.scale)
	return out, err
}

// scaleOf a text: 100%, 12.5 %, 1:8.
func scaleOf(text string) (float64, error) {
	text = strings.TrimSpace(text)
	scale, err := 0.0, error(nil)
	if before, after, ok := strings.Cut(text, ":"); ok && strings.TrimSpace(before) == "1" {
		scale, err = strconv.ParseFloat(strings.TrimSpace(after), 64)
		scale = 1 / scale
	} else {
		scale, err = strconv.ParseFloat(strings.TrimSpace(strings.TrimSuffix(text, "%")), 64)
		scale /= 100
	}
	const least, most = 0.01, 4 // [source.OwnChoice]
	if err != nil || !(scale >= least && scale <= most) {
		return 0, fmt.Errorf("--scale %q: write a share such as 100%% or 12.5%%, from 1%% to 400%%, or a ratio such as 1:8",
			text)
	}
	return scale, nil
}

// projectFormat is what writes the drawing, by the ending of its name.
func projectFormat(path, title string, page drawing.Page, o projector.Options) (func(io.Writer) error, error) {
	const pixelsPerMM = 2
	switch files.Extension(path) {
	case ".pdf":
		if longest := max(page.Width, page.Height); longest > drawing.LongestPage {
			return nil, fmt.Errorf("the page would be %.1f m long, and that of a PDF is %.1f m at most; draw fewer pieces with "+
				"--piece, or smaller with --scale", longest/1000, drawing.LongestPage/1000)
		}
		return func(w io.Writer) error { return drawing.WriteLayeredPDF(w, title, []drawing.Page{page}) }, nil
	case ".png":
		const most = 100e6 // dots [source.OwnChoice]
		if dots := page.Width * page.Height * pixelsPerMM * pixelsPerMM; dots > most {
			return nil, fmt.Errorf("the picture would have %.0f million dots; draw fewer pieces with --piece, or smaller with "+
				"--scale", dots/1e6)
		}
		return func(w io.Writer) error { return drawing.WritePNG(w, page, pixelsPerMM) }, nil
	}
	return nil, fmt.Errorf("it is written as .pdf or .png, but the file is named %s; give it one of these endings", path)
}
