package quote

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/pieces"
	"ellwand/pieces/measure"
	"ellwand/pieces/paper"
)

func sampleQuote(t *testing.T) Request {
	offer := Offer{Name: "Crêpe", Cloth: cloth.Cloth{Name: "shell", Width: 1400, PurchaseStep: 100, Nap: cloth.OneWay},
		Price: &Price{Money: 1895, Per: measure.Metre}}
	found := Found{Lay: "open", Taken: 4030, Bound: 3800, Density: 0.8}
	option := Compare([]Candidate{{Offer: offer, Found: found, Alone: []Found{{Taken: 2110}, {Taken: 2110}}}}, Units{})[0]
	front := pieces.Rectangle("front", 300, 900)
	return Request{
		Number: "2026-014", Job: "Choir tunics", Client: "Zofia Łęcka",
		Maker: []string{"Atelier Saltmarsh", "3 Weavers' Row"},
		Date:  time.Date(2026, 3, 2, 0, 0, 0, 0, time.UTC), ValidUntil: time.Date(2026, 4, 1, 0, 0, 0, 0, time.UTC),
		Currency: money(t, "EUR"),
		Garments: []Garment{{Name: "tunic", Quantity: 2, Pieces: []pieces.Piece{front}}},
		Cloths:   []ClothRequest{{Cloth: "shell", Option: option}},
		Notions:  []Notion{{"zip", 2, 420}}, Making: []Work{{Name: "sewing", Minutes: 390, PerHour: 2800}},
		Margin: 100_000, Tax: &Tax{Name: "VAT", Rate: 210_000}, Deposit: 400_000,
		Terms: []string{"The deposit buys the cloth."},
	}
}

func pdfOf(t *testing.T, request Request, sheet paper.Paper) []byte {
	t.Helper()
	q, err := Of(request)
	require.NoError(t, err)
	var out bytes.Buffer
	require.NoError(t, q.WritePDF(&out, sheet))
	return out.Bytes()
}

// read gives the words of a PDF and its number of pages by poppler, a reader
// that is not ours.
func read(t *testing.T, pdf []byte) (words string, info string) {
	t.Helper()
	text, info := layoutOf(t, pdf)
	return strings.Join(strings.Fields(strings.ReplaceAll(text, "\u00a0", " ")), " "), info
}

// layoutOf is the text line by line, as it stands on the page.
func layoutOf(t *testing.T, pdf []byte) (text string, info string) {
	t.Helper()
	if _, err := exec.LookPath("pdftotext"); err != nil {
		t.Skip("pdftotext of poppler-utils is not installed")
	}
	path := filepath.Join(t.TempDir(), "quote.pdf")
	require.NoError(t, os.WriteFile(path, pdf, 0o600))
	lines, err := exec.Command("pdftotext", "-layout", path, "-").Output()
	require.NoError(t, err)
	about, err := exec.Command("pdfinfo", path).Output()
	require.NoError(t, err)
	return string(lines), string(about)
}

// The sheet says what the quote reckons: cloth 4.10 m at 18.95 = 77.70, margin
// 7.77, zips 8.40, 6.5 h at 28 = 182.00; sum 275.87, tax 57.93, total 333.80;
// 40 % of it 133.52.
func TestThePDFSaysTheQuote(t *testing.T) {
	words, info := read(t, pdfOf(t, sampleQuote(t), paper.A4))
	assert.Regexp(t, `Pages: +1\n`, info)
	assert.Contains(t, info, "(A4)")
	for _, want := range []string{
		"Atelier Saltmarsh", "Quote", "No. 2026-014", "2 March 2026", "valid until 1 April 2026", "Choir tunics",
		"for Zofia Łęcka",
		"2 × tunic", "Shell: Crêpe, 140 cm wide, one way 4.10 m 18.95 a metre 77.70",
		"laid open in 4.03 m (never below 3.80 m), rounding 7 cm",
		"Margin on the cloth 10 % 7.77", "Zip 2 4.20 8.40", "Sewing 6 h 30 min 28.00 an hour 182.00",
		"Sum 275.87", "VAT 21 % 57.93", "Total EUR 333.80", "Deposit, 40 % 133.52", "Balance on delivery 200.28",
		"the 2 garments laid together take 4.10 m; bought one by one they take 4.40 m, 5.68 EUR more",
		"The deposit buys the cloth.",
	} {
		assert.Contains(t, words, want)
	}
}

func TestThePDFInTheClientsUnits(t *testing.T) {
	request := sampleQuote(t)
	request.Units.Inches = true
	words, info := read(t, pdfOf(t, request, paper.Letter))
	assert.Contains(t, info, "(letter)")
	assert.Contains(t, words, "Shell: Crêpe, 55 1/8 in wide, one way 4 1/2 yd (4.10 m)")
}

// A long client is broken into lines, which keep off the picture.
func TestThePDFBreaksALongClient(t *testing.T) {
	request := sampleQuote(t)
	request.Client = strings.Repeat("the committee of the choir and ", 4) + "its friends"
	text, _ := layoutOf(t, pdfOf(t, request, paper.A4))
	assert.NotContains(t, text, "for "+request.Client)
	assert.Contains(t, text, "its friends")
}

func TestThePDFStaysOnOnePage(t *testing.T) {
	request := sampleQuote(t)
	for range 14 {
		request.Notions = append(request.Notions,
			Notion{"buttons of mother-of-pearl, " + strings.Repeat("large ", 3), 12, 95})
		request.Terms = append(request.Terms, strings.Repeat("These are further terms. ", 8))
	}
	words, info := read(t, pdfOf(t, request, paper.A4))
	assert.Regexp(t, `Pages: +1\n`, info)
	assert.Equal(t, 15, strings.Count(words, "The deposit buys the cloth.")+strings.Count(words,
		"These are further terms. These are further terms. These are further terms. These are further terms. These are "+
			"further terms. These are further terms. These are further terms. These are further terms."))

	for range 100 {
		request.Terms = append(request.Terms, "More and more.")
	}
	q, err := Of(request)
	require.NoError(t, err)
	assert.ErrorContains(t, q.WritePDF(&bytes.Buffer{}, paper.A4), "does not fit on one page: shorten its terms")
}

func TestThePDFIsTheSameFromRunToRun(t *testing.T) {
	assert.True(t, bytes.Equal(pdfOf(t, sampleQuote(t), paper.A4), pdfOf(t, sampleQuote(t), paper.A4)))
}

// The picture stays within its frame, and no two pieces of it overlap.
func TestPictureFitsItsFrame(t *testing.T) {
	garment := Garment{Name: "g"}
	for i, size := range [][2]float64{{300, 900}, {600, 200}, {100, 100}, {450, 700}, {80, 1200}} {
		piece := pieces.Rectangle(string(rune('a'+i)), size[0], size[1])
		garment.Pieces = append(garment.Pieces, piece)
	}
	all, scale := pictureOf([]Garment{garment, garment}, 80, 45)
	require.Len(t, all, 5)
	assert.Positive(t, scale)
	for i, a := range all {
		assert.LessOrEqual(t, (a.x+a.width)*scale, 80+1e-9)
		assert.LessOrEqual(t, (a.y+a.height)*scale, 45+1e-9)
		for _, b := range all[:i] {
			apart := a.x >= b.x+b.width || b.x >= a.x+a.width || a.y >= b.y+b.height || b.y >= a.y+a.height
			assert.True(t, apart)
		}
	}
	none, _ := pictureOf(nil, 80, 45)
	assert.Empty(t, none)
}
