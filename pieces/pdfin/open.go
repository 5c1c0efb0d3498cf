package pdfin

import (
	"bytes"
	"context"
	"errors"

	"github.com/pdfcpu/pdfcpu/pkg/filter"
	"github.com/pdfcpu/pdfcpu/pkg/pdfcpu"
	"github.com/pdfcpu/pdfcpu/pkg/pdfcpu/model"
	"github.com/pdfcpu/pdfcpu/pkg/pdfcpu/types"

	"ellwand/pieces/found"
	"ellwand/pieces/linework"
)

// The most that is read of a file [source.OwnChoice].
const (
	mostObjects = 200_000
	// mostPacked is what a packed stream of objects may unpack to, bytes.
	mostPacked = 4 << 20
	// mostContent is what the contents of a page, or of what it shows, may unpack to.
	mostContent = 48 << 20
	mostNesting = 60
)

func init() {
	model.ConfigPath = "disable" // so that the library writes no settings into the home folder
}

// document is an open file.
type document struct {
	table  *model.XRefTable
	budget *linework.Budget
}

// open a file. What the library cannot read, or gives up on, is damaged.
func open(data []byte, budget *linework.Budget) (d *document, err error) {
	if !bytes.Contains(data[:min(len(data), 1024)], []byte("%PDF-")) {
		return nil, &linework.Fault{Of: linework.NotPDF}
	}
	if !bytes.Contains(data[max(0, len(data)-2048):], []byte("%%EOF")) {
		return nil, &linework.Fault{Of: linework.CutShort}
	}
	if err := unpacked(data, budget); err != nil {
		return nil, err
	}
	settings := model.NewDefaultConfiguration()
	settings.ValidationMode = model.ValidationRelaxed
	settings.Limits = model.ResourceLimits{
		MaxStreamBytes: int64(len(data)), MaxDecodeBytes: mostPacked, MaxImagePixels: 1, MaxImageBytes: 1,
		MaxObjectCount: mostObjects, MaxObjectStreamCount: mostObjects, MaxObjectStreamFirst: mostPacked,
		MaxXRefEntries: mostObjects, MaxRecursionDepth: mostNesting,
	}
	defer func() { // of the library, on damaged files
		if recover() != nil {
			d, err = nil, errDamaged
		}
	}()
	read, err := pdfcpu.ReadWithContext(context.Background(), bytes.NewReader(data), settings)
	switch {
	case errors.Is(err, pdfcpu.ErrWrongPassword), errors.Is(err, pdfcpu.ErrEncrypted),
		errors.Is(err, pdfcpu.ErrOwnerPasswordRequired):
		return nil, errLocked
	case errors.Is(err, filter.ErrDecodeLimitExceeded):
		return nil, &found.TooMuch{What: found.Bytes}
	case err != nil:
		return nil, errDamaged
	case read.Encrypt != nil:
		return nil, errLocked
	}
	return &document{table: read.XRefTable, budget: budget}, nil
}

var (
	errDamaged = &linework.Fault{Of: linework.Damaged}
	errLocked  = &linework.Fault{Of: linework.Locked}
)

// resolve what an object stands for; nil where it is nothing.
func (d *document) resolve(o types.Object) types.Object {
	for range mostNesting {
		ref, ok := o.(types.IndirectRef)
		if !ok {
			return o
		}
		next, err := d.table.Dereference(ref)
		if err != nil {
			return nil
		}
		o = next
	}
	return nil
}

func (d *document) dict(o types.Object) types.Dict {
	switch v := d.resolve(o).(type) {
	case types.Dict:
		return v
	case types.StreamDict:
		return v.Dict
	}
	return nil
}

func (d *document) array(o types.Object) types.Array {
	v, _ := d.resolve(o).(types.Array)
	return v
}

func (d *document) name(o types.Object) string {
	v, _ := d.resolve(o).(types.Name)
	return string(v)
}

func (d *document) number(o types.Object) (float64, bool) {
	switch v := d.resolve(o).(type) {
	case types.Integer:
		return float64(v), true
	case types.Float:
		return float64(v), true
	}
	return 0, false
}

// numbers of an array; not ok where it is none, or not of so many.
func (d *document) numbers(o types.Object, many int) (out []float64, ok bool) {
	list := d.array(o)
	if len(list) != many {
		return nil, false
	}
	for _, one := range list {
		x, ok := d.number(one)
		if !ok {
			return nil, false
		}
		out = append(out, x)
	}
	return out, true
}

func (d *document) text(o types.Object) string {
	words, err := d.table.DereferenceText(o)
	if err != nil {
		return ""
	}
	return words
}

// content of a stream, unpacked.
func (d *document) content(o types.Object) ([]byte, error) {
	stream, ok := d.resolve(o).(types.StreamDict)
	if !ok {
		return nil, nil
	}
	err := stream.DecodeWithLimit(mostContent)
	switch {
	case errors.Is(err, filter.ErrDecodeLimitExceeded):
		return nil, &found.TooMuch{What: found.Bytes}
	case errors.Is(err, filter.ErrUnsupportedFilter):
		return nil, &linework.Fault{Of: linework.Packed}
	case err != nil && len(stream.Content) == 0:
		return nil, errDamaged
	}
	return stream.Content, d.budget.Spend(found.Bytes, len(stream.Content))
}

// named is what the resources of a kind call so.
func (d *document) named(resources types.Dict, kind, name string) types.Object {
	of, ok := resources.Find(kind)
	if !ok {
		return nil
	}
	one, _ := d.dict(of).Find(name)
	return one
}
