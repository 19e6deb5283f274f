using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Drawing.Charts;
using DocumentFormat.OpenXml.Packaging;
using A = DocumentFormat.OpenXml.Drawing;
using Xdr = DocumentFormat.OpenXml.Drawing.Spreadsheet;

namespace RetrofitCalc.Reports.Workbook;

/// <summary>A native chart of the sum so far, drawn by the spreadsheet from the cells. Its line has its own colour: without a theme it would be invisible.</summary>
internal static class CashFlowChartPart
{
    private const string Teal = "0F5F61";

    public static void Add(WorksheetPart sheet, CashFlowSheet flow, string title)
    {
        var drawings = sheet.AddNewPart<DrawingsPart>();
        var part = drawings.AddNewPart<ChartPart>();
        part.ChartSpace = new ChartSpace(new Chart(Title(title), new AutoTitleDeleted { Val = false },
            new PlotArea(new Layout(), Line(flow), YearAxis(), MoneyAxis()), new PlotVisibleOnly { Val = true }));
        drawings.WorksheetDrawing = new Xdr.WorksheetDrawing(Anchor(drawings.GetIdOfPart(part), title, (int)flow.LastRow + 1));
        // The schema wants the drawing after the page set-up.
        sheet.Worksheet!.Append(new DocumentFormat.OpenXml.Spreadsheet.Drawing { Id = sheet.GetIdOfPart(drawings) });
    }

    private static LineChart Line(CashFlowSheet flow) => new(
        new Grouping { Val = GroupingValues.Standard },
        new VaryColors { Val = false },
        new LineChartSeries(
            new DocumentFormat.OpenXml.Drawing.Charts.Index { Val = 0 }, new Order { Val = 0 },
            new SeriesText(new StringReference(new Formula("'Cash flow'!$G$2"))),
            new ChartShapeProperties(new A.Outline(new A.SolidFill(new A.RgbColorModelHex { Val = Teal })) { Width = 28575 }),
            new Marker(new Symbol { Val = MarkerStyleValues.None }),
            new CategoryAxisData(new NumberReference(new Formula($"'Cash flow'!$A${flow.FirstRow}:$A${flow.LastRow}"))),
            new Values(new NumberReference(new Formula($"'Cash flow'!$G${flow.FirstRow}:$G${flow.LastRow}"))),
            new Smooth { Val = false }),
        new AxisId { Val = 1 }, new AxisId { Val = 2 });

    private static CategoryAxis YearAxis() => new(
        new AxisId { Val = 1 }, new Scaling(new Orientation { Val = OrientationValues.MinMax }), new Delete { Val = false },
        new AxisPosition { Val = AxisPositionValues.Bottom }, Title("years"),
        new TickLabelPosition { Val = TickLabelPositionValues.Low }, new CrossingAxis { Val = 2 });

    private static ValueAxis MoneyAxis() => new(
        new AxisId { Val = 2 }, new Scaling(new Orientation { Val = OrientationValues.MinMax }), new Delete { Val = false },
        new AxisPosition { Val = AxisPositionValues.Left },
        new MajorGridlines(new ChartShapeProperties(new A.Outline(new A.SolidFill(new A.RgbColorModelHex { Val = "BBBBBB" })))),
        new NumberingFormat { FormatCode = "#,##0", SourceLinked = false },
        new TickLabelPosition { Val = TickLabelPositionValues.Low }, new CrossingAxis { Val = 1 });

    private static Title Title(string text) => new(
        new ChartText(new RichText(new A.BodyProperties(), new A.Paragraph(new A.Run(new A.RunProperties { FontSize = 1100, Bold = true }, new A.Text(text))))),
        new Overlay { Val = false });

    private static Xdr.TwoCellAnchor Anchor(string chart, string alt, int row) => new(
        new Xdr.FromMarker(new Xdr.ColumnId("0"), new Xdr.ColumnOffset("0"), new Xdr.RowId($"{row}"), new Xdr.RowOffset("0")),
        new Xdr.ToMarker(new Xdr.ColumnId("6"), new Xdr.ColumnOffset("0"), new Xdr.RowId($"{row + 20}"), new Xdr.RowOffset("0")),
        new Xdr.GraphicFrame(
            new Xdr.NonVisualGraphicFrameProperties(new Xdr.NonVisualDrawingProperties { Id = 2, Name = "Cumulative cash flow", Description = alt }, new Xdr.NonVisualGraphicFrameDrawingProperties()),
            new Xdr.Transform(new A.Offset { X = 0, Y = 0 }, new A.Extents { Cx = 0, Cy = 0 }),
            new A.Graphic(new A.GraphicData(new ChartReference { Id = chart }) { Uri = "http://schemas.openxmlformats.org/drawingml/2006/chart" })),
        new Xdr.ClientData());
}
