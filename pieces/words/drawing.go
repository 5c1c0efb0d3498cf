package words

import (
	"cmp"
	"fmt"
	"strings"

	"ellwand/pieces/linework"
)

// InDrawing says what is wrong with a drawing in a file, where, and what to do.
func InDrawing(f *linework.Fault) string {
	sentence, known := inDrawing[f.Of]
	if !known {
		return f.Error()
	}
	return placeInDrawing(f) + sentence(f)
}

// placeInDrawing is what stands before the sentence.
func placeInDrawing(f *linework.Fault) string {
	text := ""
	if f.Page > 0 {
		text += fmt.Sprintf("page %d: ", f.Page)
	}
	if f.Line > 0 {
		text += fmt.Sprintf("line %d: ", f.Line)
	}
	if f.Element != "" {
		text += fmt.Sprintf("<%s> ", f.Element)
	}
	if f.Attribute != "" {
		text += f.Attribute + ": "
	}
	return text
}

type sentenceOfDrawing func(f *linework.Fault) string

var inDrawing = map[linework.Defect]sentenceOfDrawing{
	linework.NoLines: ofDrawing("there are no lines in it; if it holds pictures, trace it as a photo or scan"),
	linework.TooFar: ofDrawing("a line of it reaches farther than 1 km; its scale is wrong, or the file is " +
		"damaged"),
	linework.DotsOnly: ofDrawing("the drawing holds pictures of dots and no lines; trace it as a photo or scan"),

	linework.NoSuchLines: func(f *linework.Fault) string {
		return fmt.Sprintf("there are no lines %d; the overview numbers them from 1 to %d", f.Number, f.Known)
	},
	linework.NoSuchLayer: func(f *linework.Fault) string {
		return fmt.Sprintf("there is no layer %q; it has %s", f.Text, cmp.Or(strings.Join(f.Names, ", "), "none"))
	},
	linework.NoSuchPage: func(f *linework.Fault) string {
		return fmt.Sprintf("there is no page %d; the file has %d", f.Number, f.Known)
	},
	linework.OverlapUnsure: ofDrawing("how far the sheets lie over each other was not found, since the lines fit by " +
		"several; measure it, or read it in the instructions, and say it"),
	linework.SheetsUnjoined: func(f *linework.Fault) string {
		return fmt.Sprintf("%d lines run off the sheets, and how these go together was not found", f.Number)
	},

	linework.NotPDF:   ofDrawing("it is no PDF file"),
	linework.CutShort: ofDrawing("the PDF file is not complete; fetch it again"),
	linework.Damaged: ofDrawing("the PDF file is damaged; fetch it again, or open it in a viewer and print it to a " +
		"new file"),
	linework.Locked: ofDrawing("the PDF file is encrypted; ask the seller for one that is not, or print it, lay a " +
		"ruler beside it and trace a photo of it"),
	linework.Packed: ofDrawing("the drawing in the PDF file is packed in a way that is not read; open it in a viewer " +
		"and print it to a new file"),
	linework.NoPages: ofDrawing("the PDF file has no pages"),
	linework.TooManyPages: func(f *linework.Fault) string {
		return fmt.Sprintf("the PDF file has more than %d pages; take out those of the pattern", f.Number)
	},
	linework.NoPaper: ofDrawing("it says no size of its paper; open the file in a viewer and print it to a new one"),
	linework.PaperNoSize: ofDrawing("its paper has no size; open the file in a viewer and print it to a new " +
		"one"),
	linework.OnlyPictures: ofDrawing("the PDF file holds pictures of dots and no lines; trace it as a photo or scan"),

	linework.NotSVG:    quoting("it is no SVG drawing: it begins with <%s>, not with <svg>"),
	linework.NoDrawing: ofDrawing("it is no SVG drawing: there is no drawing in it"),
	linework.Entities: ofDrawing("it defines entities, which a drawing has no use for and a hostile one may fill the " +
		"memory with; save it as plain SVG"),
	linework.Entity:     ofDrawing("it has an entity, which a drawing has no use for; save it as plain SVG"),
	linework.Incomplete: quoting("it is no complete SVG drawing (%s); save or fetch it again"),
	linework.Encoded:    quoting("it cannot be read: it is written in %s; save it as UTF-8"),
	linework.Unreadable: quoting("it cannot be read: %s"),

	linework.NumberMissing:  quoting("a number is missing at %q"),
	linework.NumberTooLarge: quoting("%s is too large"),
	linework.BitMissing:     quoting("0 or 1 is missing at %q"),
	linework.PointHalf:      ofDrawing("a number is missing, each point has two"),
	linework.NoLength:       quoting("%q is no length"),
	linework.NegativeSize:   quoting("%s is negative"),
	linework.NoBox:          quoting("%q is no box of four numbers with a width and a height"),
	linework.NoMove:         quoting("a path begins with M, this one with %q"),
	linework.NoCommand:      quoting("%q is no command of a path"),
	linework.NoTransform:    quoting("transform %q cannot be read"),

	linework.UsesAnother: quoting("it uses %q of another file; open the drawing in the program that made it, and " +
		"embed what is linked"),
	linework.UsesNothing: quoting("it uses %q, which is not there; the file is damaged"),
	linework.ShowsItself: quoting("%q shows itself over and over; it is not a drawing"),
	linework.ScaledToNothing: ofDrawing("it is scaled to nothing, or to no size at all; undo that in the program that " +
		"drew it"),

	linework.Binary: ofDrawing("it is a binary DXF file; write it as ASCII DXF"),
	linework.NoCode: ofDrawing("a group code is expected here, a whole number; is the file damaged?"),
	linework.CutInGroup: func(f *linework.Fault) string {
		return fmt.Sprintf("the file ends in the middle of a group, after line %d; is it complete?", f.Number)
	},
	linework.FarNumber:  quoting("%.20q is no number that a drawing can have"),
	linework.NoArc:      sized("an arc of the radius %g is no line"),
	linework.NoEllipse:  ofDrawing("an ellipse without a width is no line"),
	linework.NoBlock:    ofDrawing("a block is inserted with the scale 0, so there is nothing of it"),
	linework.BlockAmiss: ofDrawing("a block is inserted at a scale that leaves nothing of it, or far too large"),
	linework.SplineAmiss: ofDrawing("a spline whose control points and knots do not belong together; is the file " +
		"damaged?"),
	linework.NoWeight: sized("a spline with a weight of %g is no line"),
}

// sized is a sentence with the size that it speaks of.
func sized(format string) sentenceOfDrawing {
	return func(f *linework.Fault) string { return fmt.Sprintf(format, f.Size) }
}

// quoting is a sentence with the text that it speaks of.
func quoting(format string) sentenceOfDrawing {
	return func(f *linework.Fault) string { return fmt.Sprintf(format, f.Text) }
}

// ofDrawing is the same sentence of all drawings.
func ofDrawing(text string) sentenceOfDrawing {
	return func(*linework.Fault) string { return text }
}
